import type { JobInput } from "@stayput/job";
import { html, type TemplateResult } from "lit";
import type { Keys } from "../store/at.ts";
import { blank, choose, type Card } from "./card.ts";

type Fridge = Exclude<JobInput["loads"][number], { kind: "appliance" }>;

/** The few fields that a fridge's use follows from. */
export const fridgeFields = (card: Card, keys: Keys, load: Fridge): TemplateResult =>
  load.kind === "compressor-fridge" ? compressor(card, keys) : absorption(card, keys);

const compressor = (card: Card, keys: Keys): TemplateResult =>
  html`<div class="line">
    ${blank(card, [...keys, "ratedAt_C"], "Rated at", { unit: "°C" })}
    ${blank(card, [...keys, "inside_C"], "Set to", { unit: "°C" })}
    ${blank(card, [...keys, "volume_L"], "Volume", { unit: "L" })}
    ${blank(card, [...keys, "compressor_W"], "Compressor, running", { unit: "W", standard: "by its size" })}
    ${blank(card, [...keys, "restock_kg_day"], "Put in warm", { unit: "kg/day" })}
    ${blank(card, [...keys, "freezerShare"], "Of it freezer", { kind: "percent", unit: "%" })}
    ${blank(card, [...keys, "cutOut_V"], "Stops itself below", { unit: "V", standard: "10.4 for each 12" })}
    ${choose(card, [...keys, "supply"], "Runs on", [
      { value: "dc", label: "the bank" },
      { value: "ac", label: "the inverter" },
    ])}
    ${choose(card, [...keys, "only"], "Only while", [
      { value: "", label: "driving or camped", stands: undefined },
      { value: "driving", label: "driving" },
      { value: "camped", label: "camped" },
    ])}
  </div>`;

const yesNo = [
  { value: "yes", label: "yes", stands: true },
  { value: "no", label: "no", stands: false },
];

const absorption = (card: Card, keys: Keys): TemplateResult =>
  html`<div class="line">
    ${blank(card, [...keys, "element_dc_W"], "12 V element", { unit: "W" })}
    ${blank(card, [...keys, "element_ac_W"], "Mains element", { unit: "W" })}
    ${blank(card, [...keys, "gas_g_day"], "Gas at 25 °C", { unit: "g/day" })}
    ${blank(card, [...keys, "controls_A"], "Controls on gas", { unit: "A" })}
    ${blank(card, [...keys, "volume_L"], "Volume", { unit: "L" })}
    ${choose(card, [...keys, "thermostat", "gas"], "Thermostat on gas", yesNo)}
    ${choose(card, [...keys, "thermostat", "dc"], "Thermostat on 12 V", yesNo)}
    ${choose(card, [...keys, "thermostat", "ac"], "Thermostat on mains", yesNo)}
  </div>`;
