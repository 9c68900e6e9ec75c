import { html, nothing, type TemplateResult } from "lit";
import { insertAt, removeAt, type Keys } from "../store/at.ts";
import { edit, set } from "../store/edit.ts";
import { blank, choose, meant, type Card } from "./card.ts";
import { group, wasPart, type Column } from "./column.ts";
import { feedFields } from "./feedFields.ts";
import { noteList, setupNotes } from "./notes.ts";

export function setupFields(card: Card, index: number, host: HTMLElement): TemplateResult {
  const setup = card.job.setups[index];
  if (setup === undefined) return html``;
  const at = (keys: Keys): Keys => ["setups", index, ...keys];
  const left = (keys: Keys): Keys | null => (index === 0 ? null : ["setups", index - 1, ...keys]);
  const column: Column = {
    card,
    index,
    setup,
    host,
    at,
    blank: (keys, label, options = {}) => blank(card, at(keys), label, { ...options, leftKeys: left(keys) }),
    choose: (keys, label, choices, wide = false) =>
      choose(card, at(keys), label, choices, { leftKeys: left(keys), wide }),
  };
  return html`${bankFields(column)}${sunFields(column)}${feedFields(column)}${inverterFields(column)}${mainsFields(column)}
  ${leftOut(column)}${costFields(column)}`;
}

const chemistryChoices = [
  { value: "agm", label: "AGM" },
  { value: "gel", label: "gel" },
  { value: "flooded", label: "flooded lead-acid" },
  { value: "lfp", label: "lithium iron phosphate" },
];

function bankFields({ blank: b, choose: c }: Column): TemplateResult {
  return group(
    "Bank",
    html`<div class="pair">
        ${c(["bank", "chemistry"], "Chemistry", chemistryChoices, true)}
        ${b(["bank", "capacity_Ah"], "Capacity", { unit: "Ah" })}
        ${c(["bank", "nominal_V"], "Volts", [
          { value: "12", label: "12 V", stands: 12 },
          { value: "24", label: "24 V", stands: 24 },
        ])}
        ${b(["bank", "condition"], "Capacity left", { kind: "percent", unit: "%" })}
      </div>
      <details class="more">
        <summary>More</summary>
        <div class="pair">
          ${c(["bank", "where"], "Stands", [
            { value: "inside", label: "inside" },
            { value: "outside", label: "outside" },
          ])}
          ${b(["bank", "reserve"], "Keep back", { kind: "percent", unit: "%", standard: "usual" })}
          ${b(["bank", "cutOff_V"], "Loads drop at", { unit: "V", standard: "usual" })}
          ${b(["bank", "absorption_V"], "Charges at", { unit: "V", standard: "usual" })}
        </div>
      </details>`,
  );
}

function sunFields(column: Column): TemplateResult {
  const { setup, host, at } = column;
  const arrays = setup.arrays ?? [];
  const add = () => edit(host, "Add panels", (job) => insertAt(job, at(["arrays"]), { watts: 200 }));
  return group(
    "Sun",
    html`${arrays.map((_, i) => arrayFields(column, i))}
      <button type="button" class="quiet" @click=${add}>
        ${arrays.length === 0 ? "Add panels" : "Add more panels"}
      </button>
      ${arrays.length === 0 ? nothing : solarChargerFields(column)}`,
  );
}

function arrayFields({ card, host, at, blank: b, choose: c }: Column, i: number): TemplateResult {
  const name = meant(card, at(["arrays", i, "name"]));
  const title = typeof name === "string" && name !== "" ? name : `Panels ${i + 1}`;
  return html`<div class="entry" role="group" aria-label=${title}>
    <div class="pair">
      ${b(["arrays", i, "watts"], title, { unit: "W" })}
      ${c(
        ["arrays", i, "mount"],
        "Fitted",
        [
          { value: "flush", label: "on the roof, air under it" },
          { value: "free", label: "in free air" },
          { value: "bonded", label: "bonded down" },
        ],
        true,
      )}
    </div>
    <details class="more">
      <summary>Tilt, dirt</summary>
      <div class="pair">
        ${b(["arrays", i, "tilt_deg"], "Tilt", { unit: "°" })}
        ${b(["arrays", i, "azimuth_deg"], "Faces, from north", { unit: "°", standard: "equator" })}
        ${b(["arrays", i, "soiling"], "Lost to dirt", { kind: "percent", unit: "%" })}
        ${b(["arrays", i, "name"], "Called", { kind: "text", standard: `Array ${i + 1}` })}
      </div>
      <button
        type="button"
        class="quiet"
        @click=${() => edit(host, `Remove ${title.toLowerCase()}`, (job) => removeAt(job, at(["arrays"]), i))}
      >
        Remove ${title.toLowerCase()}
      </button>
    </details>
  </div>`;
}

/** Left out, a charger large enough is assumed; null is none; else its kind and rating. */
function solarChargerFields({ card, setup, index, host, at, blank: b }: Column): TemplateResult {
  const { solarCharger } = setup;
  const stands = solarCharger === undefined ? "fit" : solarCharger === null ? "none" : solarCharger.kind;
  const rated = card.read?.study.setups[index]?.solarCharger?.rated_A ?? 20;
  const rated_A = typeof solarCharger?.rated_A === "number" ? solarCharger.rated_A : rated;
  const choices = [
    { value: "fit", label: `large enough (${rated} A MPPT)`, stands: undefined },
    { value: "mppt", label: "MPPT", stands: { kind: "mppt", rated_A } },
    { value: "pwm", label: "PWM", stands: { kind: "pwm", rated_A } },
    { value: "none", label: "none", stands: null },
  ];
  return html`<div class="pair">
    <choice-field
      class="field span"
      label="Solar charger"
      .keys=${at(["solarCharger"])}
      .value=${stands}
      .choices=${choices}
      .was=${wasPart(card, index, "solarCharger", (value) => chargerText(value))}
      @pick=${(event: CustomEvent) => {
        event.preventDefault();
        set(host, "Change solar charger", at(["solarCharger"]), event.detail);
      }}
    ></choice-field>
    ${stands === "mppt" || stands === "pwm" ? b(["solarCharger", "rated_A"], "Rated", { unit: "A" }) : nothing}
  </div>`;
}

const chargerText = (value: unknown): string => {
  if (value === undefined) return "large enough";
  if (value === null) return "none";
  const { kind, rated_A } = value as { kind: string; rated_A: number };
  return `${kind.toUpperCase()}, ${rated_A} A`;
};

function inverterFields(column: Column): TemplateResult {
  const { card, setup, index, blank: b, choose: c } = column;
  const on = setup.inverter !== null && setup.inverter !== undefined;
  const study = card.read?.study.setups[index]?.inverter;
  return group(
    "Inverter",
    html`${fitted(column, "inverter", on, { rated_W: 1000 })}
    ${
      on
        ? html`<div class="pair">
              ${b(["inverter", "rated_W"], "Rated", { unit: "W" })}
              ${c(["inverter", "on"], "Switched on", [
                { value: "in-use", label: "when something runs" },
                { value: "always", label: "always" },
              ])}
            </div>
            <details class="more">
              <summary>More</summary>
              <div class="pair">
                ${b(["inverter", "surge_W"], "For a few seconds", { unit: "W", standard: String(study?.surge_W ?? "twice its rating") })}
                ${b(["inverter", "idle_W"], "Draws by itself", { unit: "W", standard: String(study?.idle_W ?? "by its rating") })}
                ${b(["inverter", "peakEfficiency"], "Best efficiency", { kind: "percent", unit: "%", standard: "usual" })}
              </div>
            </details>`
        : nothing
    }`,
  );
}

function mainsFields(column: Column): TemplateResult {
  const on = column.setup.mainsCharger !== null && column.setup.mainsCharger !== undefined;
  return group(
    "Mains charger",
    html`${fitted(column, "mainsCharger", on, { rated_A: 20 })}
    ${on ? html`<div class="pair">${column.blank(["mainsCharger", "rated_A"], "Rated", { unit: "A" })}</div>` : nothing}`,
  );
}

/** Fitted or not; taking it out and putting it back is one undo away. */
function fitted(
  { card, index, host, at }: Column,
  key: "inverter" | "mainsCharger",
  on: boolean,
  start: unknown,
): TemplateResult {
  const was = wasPart(card, index, key, (value) => (value === null || value === undefined ? "not fitted" : "fitted"));
  return html`<label class="tick ${was === "" ? "" : "differs"}"
      ><input
        type="checkbox"
        .checked=${on}
        @change=${(event: Event) =>
          set(
            host,
            key === "inverter" ? "Change inverter" : "Change mains charger",
            at([key]),
            (event.target as HTMLInputElement).checked ? start : undefined,
          )}
      />Fitted</label
    >${was === "" ? nothing : html`<span class="was">was ${was}</span>`}`;
}

/** Loads of the job that do not run with this setup. */
function leftOut({ card, setup, host, at }: Column): TemplateResult {
  const drop = setup.loads?.drop ?? [];
  const { loads } = card.job;
  if (loads.length === 0) return html``;
  const toggle = (id: string, out: boolean) =>
    set(
      host,
      "Change what runs with it",
      at(["loads", "drop"]),
      out ? [...drop, id] : drop.filter((each) => each !== id),
    );
  return html`<details class="more part">
    <summary>
      Runs
      ${drop.length === 0 ? "everything" : `all but ${drop.length}`}${
        (setup.loads?.add?.length ?? 0) > 0 ? `, and ${setup.loads!.add!.length} of its own` : ""
      }
    </summary>
    ${loads.map(
      ({ id, name }) =>
        html`<label class="tick"
          ><input
            type="checkbox"
            .checked=${!drop.includes(id)}
            @change=${(event: Event) => toggle(id, !(event.target as HTMLInputElement).checked)}
          />${name}</label
        >`,
    )}
    ${(setup.loads?.add ?? []).map(({ name }) => html`<p class="note">and ${name}</p>`)}
  </details>`;
}

function costFields({ card, index, blank: b }: Column): TemplateResult {
  const { currency } = card.job;
  return group(
    "Price and mass",
    html`<div class="pair">
        ${b(["price"], "Price", { unit: currency ?? "" })} ${b(["mass_kg"], "Mass against now", { unit: "kg" })}
      </div>
      ${noteList(setupNotes(card, index))}`,
  );
}
