import { sizingDefaults } from "@stayput/job/sizing";
import { sayList, sayMonth, sayNumber, sayPercent } from "@stayput/charts";
import type { SizePoint } from "@stayput/sim";
import { html, nothing, type TemplateResult } from "lit";
import type { JobInput } from "@stayput/job";
import { insertAt } from "../store/at.ts";
import { edit } from "../store/edit.ts";
import { blank, type Card } from "../sheet/card.ts";
import { newId } from "../sheet/newId.ts";
import { noteList } from "../sheet/notes.ts";
import type { LongAnswer } from "../worker/askLong.ts";
import type { Read } from "../worker/protocol.ts";
import type { AnyPicture } from "./benchPicture.ts";
import type { Slip } from "./longDesk.ts";
import { sizeData } from "./pictures.ts";
import { workingView } from "./workingView.ts";
import { locale } from "../words/locale.ts";

export interface SizeViewOptions {
  readonly host: HTMLElement;
  readonly card: Card;
  readonly read: Read;
  readonly setup: string;
  readonly heading: string;
  readonly slip: Slip<Extract<LongAnswer, { kind: "sizes" }>>;
  /** the picture's kind; null while it is fetched */
  readonly kind: AnyPicture | null;
  readonly chemistry: string;
  readonly choose: (chemistry: string) => void;
  readonly ask: () => void;
  readonly cancel: () => void;
}

const chemistryNames: Readonly<Record<string, string>> = {
  agm: "AGM",
  gel: "gel",
  flooded: "flooded lead-acid",
  lfp: "lithium iron phosphate",
};

/** What size: worked out when asked, since it tries hundreds of pairs; each size found can become a proposal. */
export function sizeView(options: SizeViewOptions): TemplateResult {
  const { read, slip, setup } = options;
  const { answer, progress, stale, fault } = slip;
  const grids = answer?.grids ?? [];
  const own = read.study.setups.find(({ id }) => id === setup)?.bank.chemistry;
  const asked = options.chemistry === "" ? (answer?.size.pick?.chemistry ?? own) : options.chemistry;
  const chemistry = grids.find((grid) => grid.chemistry === asked)?.chemistry ?? grids[0]?.chemistry ?? "";
  const points = answer?.size.staircases.flatMap(({ corners }) => corners) ?? [];
  const ofChemistry = points.filter((point) => point.chemistry === chemistry);
  return html`<bench-picture
    .heading=${options.heading}
    name="what-size"
    .kind=${options.kind}
    .data=${answer === null ? null : sizeData({ read, answer: { grids, points } }, chemistry)}
    .stale=${stale}
    @point=${({ detail }: CustomEvent<number>) => {
      const point = ofChemistry[detail];
      if (point !== undefined) propose(options, point);
    }}
    .height_px=${340}
    .empty=${fault ?? ""}
    .above=${html`${wishes(options)}
      <div class="ask">${askButton(options, progress, answer === null, stale)}</div>
      ${grids.length < 2 ? nothing : chemistryChoice(options, chemistry)}`}
    .below=${html`${answer === null ? nothing : found(options, answer, ofChemistry)} ${workingView("sizes", [], null)}`}
  ></bench-picture>`;
}

/** What to size for; what is left out is the trip's own, or no limit. */
const wishes = ({ card, read }: SizeViewOptions): TemplateResult =>
  html`<div class="line">
      ${blank(card, ["sizing", "nights"], "Nights to size for", {
        unit: "nights",
        standard: String(read.study.trip.nights),
      })}
      ${blank(card, ["sizing", "chance"], "How sure", { kind: "percent", unit: "%", standard: sayNumber(100 * sizingDefaults.chance, locale()) })}
      ${blank(card, ["sizing", "roof_W"], "Most on the roof", { unit: "W", standard: "no limit" })}
      ${blank(card, ["sizing", "budget"], "Most to spend", { unit: read.job.currency ?? "", standard: "no limit" })}
    </div>
    ${monthsNote(read.job.sizing?.months ?? [])}`;

const monthsNote = (months: readonly number[]): TemplateResult | typeof nothing =>
  months.length === 0
    ? nothing
    : html`<p class="note">To hold in ${sayList(months.map((month) => sayMonth(month, locale(), "long")))}.</p>`;

function askButton(
  { read, ask, cancel }: SizeViewOptions,
  progress: number | null,
  first: boolean,
  stale: boolean,
): TemplateResult {
  const { nights, chance } = {
    nights: read.job.sizing?.nights ?? read.study.trip.nights,
    chance: read.job.sizing?.chance ?? sizingDefaults.chance,
  };
  if (progress !== null)
    return html`<progress max="1" .value=${progress} aria-label="Trying sizes"></progress>
      <span class="note">Trying sizes, ${sayPercent(progress, locale())}</span>
      <button type="button" class="quiet" @click=${cancel}>Stop</button>`;
  if (!first && !stale)
    return html`<p class="note">For ${nights} nights with a chance of ${sayPercent(chance, locale())}.</p>`;
  return html`<button type="button" @click=${ask}>
    ${first ? "Find" : "Find again"} what lasts ${nights} nights, ${sayPercent(chance, locale())} sure
  </button>`;
}

const chemistryChoice = ({ slip, choose }: SizeViewOptions, chemistry: string): TemplateResult =>
  html`<fieldset class="chooser">
    <legend class="unseen">Chemistry of the bank</legend>
    ${(slip.answer?.grids ?? []).map(
      (grid) =>
        html`<label
          ><input
            type="radio"
            name="size-chemistry"
            .checked=${grid.chemistry === chemistry}
            @change=${() => choose(grid.chemistry)}
          />${chemistryNames[grid.chemistry]}</label
        >`,
    )}
  </fieldset>`;

function found(
  options: SizeViewOptions,
  { size, notes }: Extract<LongAnswer, { kind: "sizes" }>,
  points: readonly SizePoint[],
): TemplateResult {
  const priced = points.some(({ price }) => price !== null);
  const charger = size.charger_A === null ? "" : ` A solar charger of ${size.charger_A} A never holds that array back.`;
  return html`<p class="says">${size.reason}${charger}</p>
    ${noteList(notes)}
    ${
      points.length === 0
        ? nothing
        : html`<div class="scroll" tabindex="0" role="group" aria-label="Smallest sizes that last">
            <table class="points">
              <thead>
                <tr>
                  <th scope="col">Bank</th>
                  <th scope="col">Panels</th>
                  <th scope="col">Chance</th>
                  ${priced ? html`<th scope="col">Price</th>` : nothing}
                  <th scope="col">Mass</th>
                  <th scope="col"><span class="unseen">Take it</span></th>
                </tr>
              </thead>
              <tbody>
                ${points.map((point) => pointRow(options, point, priced))}
              </tbody>
            </table>
          </div>`
    }`;
}

function pointRow(options: SizeViewOptions, point: SizePoint, priced: boolean): TemplateResult {
  const { bank_Ah, array_W, chance, price, mass_kg } = point;
  const number = (value: number | null) => (value === null ? "–" : sayNumber(value, locale()));
  return html`<tr>
    <th scope="row">${number(bank_Ah)} Ah</th>
    <td>${number(array_W)} W</td>
    <td>${sayPercent(chance, locale())}</td>
    ${priced ? html`<td>${number(price)}</td>` : nothing}
    <td>${mass_kg === null ? "–" : `${number(mass_kg)} kg`}</td>
    <td>
      <button
        type="button"
        class="quiet"
        aria-label="Make it a proposal: ${bank_Ah} Ah with ${array_W} W"
        @click=${() => propose(options, point)}
      >
        Make it a proposal
      </button>
    </td>
  </tr>`;
}

/** The setup in hand with that bank and those panels, as the last column. */
function propose({ host, setup, slip }: SizeViewOptions, point: SizePoint): void {
  const fitted_kg = slip.answer?.fitted_kg ?? 0;
  edit(host, "Make a size a proposal", (job) => {
    const from = job.setups.find(({ id }) => id === setup);
    return from === undefined || job.setups.length >= 12
      ? job
      : insertAt(job, ["setups"], proposal(job, from, point, fitted_kg));
  });
}

type SetupInput = JobInput["setups"][number];

/** Mass is against what is fitted, whose bank and panels come out; a price or mass that is not known is left out. */
function proposal(job: JobInput, from: SetupInput, point: SizePoint, fitted_kg: number): SetupInput {
  const { chemistry, bank_Ah, array_W, price, mass_kg } = point;
  const ids = job.setups.map(({ id }) => id);
  const nominal_V = from.bank.nominal_V;
  const { solarCharger: _, price: __, mass_kg: ___, ...rest } = structuredClone(from);
  const [first] = rest.arrays ?? [];
  return {
    ...rest,
    id: newId(`${chemistry}-${bank_Ah}-${array_W}`, ids),
    name: `${bank_Ah} Ah ${chemistryNames[chemistry]}, ${array_W} W`,
    bank: { chemistry, capacity_Ah: bank_Ah, ...(nominal_V === undefined ? {} : { nominal_V }) },
    arrays: array_W === 0 ? [] : [{ ...first, watts: array_W }],
    ...(price === null ? {} : { price }),
    ...(mass_kg === null ? {} : { mass_kg: Math.round(mass_kg - fitted_kg) }),
  };
}
