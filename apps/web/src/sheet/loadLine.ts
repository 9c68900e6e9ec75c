import { sayList, sayPercent, sayWh } from "@stayput/charts";
import type { JobInput } from "@stayput/job";
import { html, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import { clockText } from "../fields/typed.ts";
import { insertAt, removeAt, setAt, type Keys } from "../store/at.ts";
import { edit, settle } from "../store/edit.ts";
import { locale } from "../words/locale.ts";
import { isWindow, lengthOf, onStrip, type StripUse } from "../strip/uses.ts";
import { blank, choose, faultNote, type Card } from "./card.ts";
import { fridgeFields } from "./fridgeFields.ts";
import { withoutLoad } from "./withoutLoad.ts";

type LoadInput = JobInput["loads"][number];
type ApplianceInput = Extract<LoadInput, { kind: "appliance" }>;

/** One line of the load list: what it is, what it draws, when, and what that comes to in a day. */
@customElement("load-line")
export class LoadLine extends LightElement {
  @property({ attribute: false }) card!: Card;
  @property({ attribute: false }) load!: LoadInput;
  @property({ type: Number }) index = 0;
  @property({ attribute: false }) Wh_day: number | null = null;

  private get keys(): Keys {
    return ["loads", this.index];
  }

  protected override render(): TemplateResult {
    const { load, card, keys } = this;
    return html`<div class="load" role="group" aria-label=${load.name}>
      ${blank(card, [...keys, "name"], "Name", { kind: "text", quiet: true })}
      ${
        load.kind === "appliance"
          ? blank(card, [...keys, "watts"], `${load.name}: watts`, { unit: "W", quiet: true })
          : load.kind === "compressor-fridge"
            ? blank(card, [...keys, "rated_Wh_day"], `${load.name}: rated use a day`, {
                unit: "Wh/day rated",
                quiet: true,
              })
            : choose(card, [...keys, "burns"], `${load.name}: burns when camped`, burns, { quiet: true })
      }
      <span class="sum">${this.Wh_day === null ? "" : html`${sayWh(this.Wh_day, locale())}<i> a day</i>`}</span>
      <button type="button" class="quiet remove" aria-label="Remove ${load.name}" title="Remove" @click=${this.takeOut}>
        ×
      </button>
      ${this.needs()} ${load.kind === "appliance" ? this.strip(load) : ""}
      <details class="more">
        <summary>${this.when()}</summary>
        ${load.kind === "appliance" ? this.more(load) : fridgeFields(card, keys, load)}
      </details>
    </div>`;
  }

  /** Which setups cannot run it, for want of an inverter. */
  private needs(): TemplateResult | string {
    const { load } = this;
    if (load.kind === "absorption-fridge" ? load.burns !== "ac" : load.supply !== "ac") return "";
    const { setups } = this.card.job;
    const without = setups.filter((setup) => !setup.inverter && setup.loads?.drop?.includes(load.id) !== true);
    if (without.length === 0) return "";
    const who = without.length === setups.length ? "no setup has one" : sayList(without.map(({ name }) => name));
    return html`<p class="note needs">
      Needs an inverter:
      ${without.length === setups.length ? `${who}, so it is not counted` : `not run, and not counted, by ${who}`}.
    </p>`;
  }

  private strip(load: ApplianceInput): TemplateResult {
    const uses = load.use.filter(onStrip);
    return html`<day-strip
        .label=${load.name}
        .uses=${uses}
        .dark=${this.card.read?.dark ?? null}
        @uses=${({ detail }: CustomEvent<readonly StripUse[]>) => this.putUses(load, detail)}
        @done=${() => settle(this)}
      ></day-strip>
      ${faultNote(this.card, [...this.keys, "use"])}`;
  }

  /** Uses typed in words are not on the strip; they keep their place behind those that are. */
  private putUses(load: ApplianceInput, uses: readonly StripUse[]): void {
    const typed = load.use.filter((use) => !onStrip(use));
    const keys = [...this.keys, "use"];
    edit(this, `Change when ${load.name} runs`, (job) => setAt(job, keys, [...uses, ...typed]), `${load.id} strip`);
  }

  /** When it runs, in words: the head of its further fields. */
  private when(): string {
    const { load } = this;
    if (load.kind === "appliance") return whenText(load.use.filter(onStrip), load);
    return load.kind === "compressor-fridge"
      ? "Runs by its thermostat: more on hot days, less in the cold"
      : "On gas it takes only its controls when camped; its 12 V element runs while driving";
  }

  private more(load: ApplianceInput): TemplateResult {
    const { card, keys } = this;
    return html`<div class="line">
        ${choose(card, [...keys, "supply"], "Runs on", [
          { value: "dc", label: "the bank" },
          { value: "ac", label: "the inverter" },
        ])}
        ${blank(card, [...keys, "count"], "How many")}
        ${blank(card, [...keys, "standby_W"], "Standing by", { unit: "W" })}
        ${blank(card, [...keys, "surge_W"], "As it starts", { unit: "W", standard: "as it runs" })}
        ${choose(card, [...keys, "only"], "Only while", [
          { value: "", label: "driving or camped", stands: undefined },
          { value: "driving", label: "driving" },
          { value: "camped", label: "camped" },
        ])}
        ${blank(card, [...keys, "outside", "above_C"], "Only when warmer than", { unit: "°C", standard: "any" })}
        ${blank(card, [...keys, "outside", "below_C"], "Only when colder than", { unit: "°C", standard: "any" })}
        ${faultNote(card, [...keys, "outside"])}
      </div>
      ${load.use.map((use, i) => this.useFields(use as StripUse, i))}
      <button
        type="button"
        class="quiet"
        @click=${() => edit(this, "Add minutes", (job) => insertAt(job, [...keys, "use"], { at: 7, minutes: 5 }))}
      >
        Add minutes at an hour
      </button>`;
  }

  private useFields(use: StripUse, i: number): TemplateResult {
    const { card, keys } = this;
    const at: Keys = [...keys, "use", i];
    const clock = { kind: "clock" } as const;
    return html`<div class="line use">
      ${
        "from" in use
          ? html`${blank(card, [...at, "from"], "From", clock)}${blank(card, [...at, "to"], "To", clock)}
            ${blank(card, [...at, "duty"], "On for", { kind: "percent", unit: "% of it" })}`
          : html`${blank(card, [...at, "at"], "At", clock)}${blank(card, [...at, "minutes"], "For", { unit: "min" })}`
      }
      ${blank(card, [...at, "everyDays"], "Every", { unit: "days" })}
      <button
        type="button"
        class="quiet"
        aria-label="Remove hours ${i + 1}"
        @click=${() => edit(this, "Remove hours", (job) => removeAt(job, [...keys, "use"], i))}
      >
        Remove
      </button>
    </div>`;
  }

  private takeOut(): void {
    const { id, name } = this.load;
    edit(this, `Remove ${name}`, (job) => withoutLoad(job, id));
  }
}

const burns = [
  { value: "gas", label: "burns gas" },
  { value: "dc", label: "12 V element" },
  { value: "ac", label: "mains element" },
];

/** When it runs, in words, for those who do not read the strip. */
function whenText(uses: readonly StripUse[], { count, only, outside }: ApplianceInput): string {
  const many = typeof count === "number" && count !== 1 ? `${count} of them, ` : "";
  const start = (use: StripUse) => (isWindow(use) ? use.from : use.at);
  const each = uses
    .toSorted((a, b) => start(a) - start(b))
    .map((use) => {
      if (!isWindow(use)) return `${use.minutes} min at ${clockText(use.at)}`;
      const hours = lengthOf(use) >= 24 ? "all day" : `${clockText(use.from)} to ${clockText(use.to)}`;
      return use.duty !== undefined && use.duty < 1 ? `${hours}, on ${sayPercent(use.duty, locale())} of it` : hours;
    });
  const limits = [
    only === "driving" ? "only while driving" : only === "camped" ? "only while camped" : "",
    typeof outside?.above_C === "number" ? `only above ${outside.above_C} °C` : "",
    typeof outside?.below_C === "number" ? `only below ${outside.below_C} °C` : "",
  ].filter((text) => text !== "");
  const when = each.length === 0 ? "never on: drag on the strip to set when it runs" : `${many}${each.join(" and ")}`;
  return [when, ...limits].join("; ");
}
