import * as z from "zod";
import { loadDefaults as d } from "../defaults.ts";
import { kinds, choice, fields, flag, id, line, list, quantity, whole } from "./leaf.ts";

const clock = (about: string): z.ZodNumber => quantity(about, "clock_h", 0, 24);
const everyDays = whole("Only on days 0, n, 2n, … counted from arrival", 1, 60).default(d.everyDays);

const windowUse = fields("On between two hours of the clock", {
  from: clock("On from"),
  to: clock("Until; before `from` it runs past midnight"),
  duty: quantity("Share of the window that it is on", "share", 0, 1).default(d.duty),
  everyDays,
});

const momentUse = fields("On for some minutes", {
  at: quantity("On at", "clock_h", 0, 23.9999),
  minutes: quantity("For so many minutes", "minutes", 0.1, 1440),
  everyDays,
});

const use = z
  .union([windowUse, momentUse], { error: "{ from, to } or { at, minutes }" })
  .describe("A use: { from, to } or { at, minutes }");

const base = {
  id: id('Short name, unique among the loads; "inverter" is taken'),
  name: line("Name for people", 120, 1),
};
const supply = choice("dc from the bank, ac through the inverter", ["dc", "ac"]);
const only = choice("Runs only while driving, or only while camped", ["driving", "camped"]).nullable().default(null);

const outside = fields("Runs only while the outside air is above or below a temperature", {
  above_C: quantity("Only when warmer than", "temperature_C", -40, 60).optional(),
  below_C: quantity("Only when colder than", "temperature_C", -40, 60).optional(),
});

export const appliance = fields("An appliance", {
  ...base,
  kind: z.literal("appliance"),
  supply,
  watts: quantity("Running draw of one", "power_W", 0, 20000),
  count: whole("How many", 1, 100).default(d.count),
  standby_W: quantity("Draw of one the rest of the time", "power_W", 0, 1000).default(d.standby_W),
  surge_W: quantity("Draw of one as it starts; null: its running draw", "power_W", 0, 60000).nullable().default(null),
  use: list("When it runs", use, 48),
  outside: outside.nullable().default(null),
  only,
});

export const compressorFridge = fields("A compressor fridge or freezer", {
  ...base,
  kind: z.literal("compressor-fridge"),
  supply,
  rated_Wh_day: quantity("What its maker or a meter says it uses in a day", "energy_Wh_day", 30, 10000),
  ratedAt_C: quantity("At this ambient", "temperature_C", 10, 50).default(d.ratedAt_C),
  inside_C: quantity("Set to", "temperature_C", -25, 15).default(d.inside_C),
  compressor_W: quantity("Running draw of the compressor; null: by volume and rating", "power_W", 10, 2000)
    .nullable()
    .default(null),
  volume_L: quantity("Inside volume", "volume_L", 5, 1000).default(d.volume_L),
  restock_kg_day: quantity("Goods put in warm", "mass_kg_day", 0, 50).default(d.restock_kg_day),
  freezerShare: quantity("Share held at -18 °C", "share", 0, 1).default(d.freezerShare),
  cutOut_V: quantity("Volts at the fridge under which it switches off; null: 10.4 for each 12 V", "volts_V", 8, 24)
    .nullable()
    .default(null),
  only,
});

const thermostat = fields("Where the mode has a thermostat", {
  gas: flag("On gas").default(d.thermostat.gas),
  dc: flag("On the 12 V element").default(d.thermostat.dc),
  ac: flag("On the mains element").default(d.thermostat.ac),
});

export const absorptionFridge = fields("An absorption (three-way) fridge", {
  ...base,
  kind: z.literal("absorption-fridge"),
  supply: z
    .literal("dc", { error: '"dc"' })
    .optional()
    .describe('May be given as "dc"; it says nothing more, for `burns` decides'),
  burns: choice("What it runs on when camped; on gas the 12 V element runs while driving only", [
    "gas",
    "dc",
    "ac",
  ]).default(d.burns),
  element_dc_W: quantity("12 V element at nominal volts", "power_W", 0, 1000).default(d.element_dc_W),
  element_ac_W: quantity("Mains element", "power_W", 0, 1000).default(d.element_ac_W),
  gas_g_day: quantity("Gas used at 25 °C ambient", "gas_g_day", 30, 2000).default(d.gas_g_day),
  controls_A: quantity("Draw of the controls while on gas", "current_A", 0, 5).default(d.controls_A),
  volume_L: quantity("Inside volume", "volume_L", 5, 1000).default(d.volume_L),
  thermostat: thermostat.default(d.thermostat),
});

export const load = kinds([appliance, compressorFridge, absorptionFridge]).describe("Something that runs");

/** A load as it stands in a parsed job. */
export type LoadInJob = z.output<typeof load>;
