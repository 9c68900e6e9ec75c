import { chargeChart, sayDays, sayNumber, sayRange } from "@stayput/charts";
import { html, nothing, type TemplateResult } from "lit";
import { assumptions, placeSaid } from "../facts/assumptions.ts";
import { dullWeeks } from "../facts/dullWeeks.ts";
import { howLong } from "../facts/howLong.ts";
import { optionsOf, type Lettered, type Option } from "../facts/options.ts";
import { roomFor, type PageTexts } from "../facts/room.ts";
import { forCustomer } from "../facts/toMind.ts";
import type { Handover } from "../handover.ts";
import { dullAdvice } from "../words/dullAdvice.ts";
import { massChangeSaid, monthDaySaid, outOf100, priceSaid } from "../words/figures.ts";
import { headline } from "../words/headline.ts";
import { dullWeeksPart } from "./dullWeeksPart.ts";
import { customerSaid, masthead, titled } from "./masthead.ts";
import { letterMark, letterMarks, lineSample, numbered, ruled, type Cell } from "./tables.ts";

/** More options than this do not fit one page beside the rest; the fitter's pages have them all. */
const mostOptions = 6;

/**
 * The page that is handed over: A4, one side. Place it with `handoutStyles` and `chartStyles`.
 * @throws RangeError where an answer is missing, or the date or the logo is not as it must be
 */
export function customerPage(handover: Handover): TemplateResult {
  const all = optionsOf(handover);
  const options = all.slice(0, mostOptions);
  const minded = forCustomer(options);
  const said = textsOf(handover, options, all);
  const room = roomFor({ ...said, cautions: minded.map(({ row }) => row) });
  const facts = dullWeeks(options, room.loads);
  return html`<article class="handout sheet customer">
    ${masthead(handover, "Estimate for planning")}${titled(handover, said.stay)}
    ${numbered(1, "The short of it", shortOfIt(said), "short")}
    ${numbered(2, "How long it lasts", picture(handover, options), "long")}
    ${numbered(3, "Options side by side", sideBySide(handover, options, all.length))}
    ${numbered(4, "When the sun stays away", dullWeeksPart(handover, options, facts, said.advice))}
    ${numbered(5, "To mind", cautions(minded, room.cautions, options.length))}
    <footer class="small">
      <p><b>${estimate}</b> ${said.small}</p>
    </footer>
  </article>`;
}

const estimate = "Estimate for planning, not a promise.";

type Texts = Omit<PageTexts, "cautions"> & { readonly stay: string };

/** Every text of the page whose length is not ours. */
function textsOf(handover: Handover, options: readonly Option[], all: readonly Option[]): Texts {
  const { lasts, why, better } = headline(handover);
  const { explained, study, job, locale = "en" } = handover;
  const from = monthDaySaid(study.trip.month, study.trip.day, locale);
  const stay = `${placeSaid(handover.place)}; ${explained.nights} ${explained.nights === 1 ? "night" : "nights"} from ${from}.`;
  const facts = dullWeeks(options);
  return {
    stay,
    where: `For ${customerSaid(job)}. ${stay}`,
    hasLogo: (handover.logo ?? null) !== null,
    lead: lasts,
    rest: [why, better ?? ""].join(" ").trim(),
    optionNames: options.map(({ name }) => name),
    advice: options[0] === undefined ? "" : dullAdvice(handover, options[0], facts),
    small: assumptions(handover, all),
    loads: facts.leftOff.length,
  };
}

const shortOfIt = ({ lead, rest }: Texts): TemplateResult =>
  html`<p class="lead">${lead}</p>
    <p>${rest}</p>`;

function picture(handover: Handover, options: readonly Option[]): TemplateResult {
  const height_px = 215;
  const { locale } = handover;
  return html`${chargeChart(howLong(handover, options), { width_px: 690, height_px, locale, id: "handout-charge" })}
    <p class="note">
      Charge of the bank, parked from arrival. Line: the middle sky. Grey: eight skies in ten. The thin rule is the
      reserve one would rather not go under.
    </p>`;
}

function sideBySide(handover: Handover, options: readonly Option[], all: number): TemplateResult {
  const columns = [
    { head: "" },
    { head: "usually lasts", figures: true },
    { head: "eight skies in ten", figures: true },
    { head: `lasts ${handover.explained.nights} nights`, figures: true },
    { head: "price", figures: true },
    { head: "mass", figures: true },
    { head: "payload left", figures: true },
  ];
  const rows = options.map((option) => optionCells(handover, option));
  return html`${ruled(columns, rows, options.length > 4 ? "options many" : "options")}
  ${all > options.length ? html`<p class="note">The fitter's page has ${all - options.length} more.</p>` : nothing}`;
}

function optionCells({ explained, job, locale = "en" }: Handover, option: Option): Cell[] {
  const { answer, setup, index, compared } = option;
  const { p10, p50, p90 } = answer.days.drawn;
  const said = (days: number | null) => sayDays(days, explained.horizon_days, locale);
  const range = sayRange(p10, p90, explained.horizon_days, locale);
  const fitted = index === 0 && setup.price === 0;
  return [
    html`<span class="named">${letterMark(option.letter)}${lineSample(index)}<bdi>${option.name}</bdi></span>`,
    html`<b>${said(p50)}</b>`,
    range === said(p50) ? "–" : range,
    outOf100(answer.chanceOfLasting, explained.draws),
    setup.price > 0 ? priceSaid(setup.price, job.currency, locale) : fitted ? "as fitted" : "not priced",
    index === 0 && setup.mass_kg === 0 ? "–" : massChangeSaid(setup.mass_kg, locale),
    payloadSaid(compared.payloadLeft_kg, locale),
  ];
}

function payloadSaid(left_kg: number | null, locale: string): Cell {
  if (left_kg === null) return "not known";
  const figure = `${sayNumber(Math.round(left_kg), locale).replace("-", "\u2212")}\u00a0kg`;
  return left_kg < 0 ? html`<b>over: ${figure}</b>` : figure;
}

function cautions(all: readonly Lettered<string>[], most: number, options: number): TemplateResult {
  const shown = all.slice(0, most);
  return html`<ul class="marks">
    ${shown.map(({ letters, row }) => html`<li>${letterMarks(letters, options)}${row}</li>`)}
    ${all.length > shown.length ? html`<li>${all.length - shown.length} more are on the fitter's page.</li>` : nothing}
    <li>
      Batteries give very large currents; mains, gas and lithium have rules of their own. Have the work done to the
      local code, by trades licensed for it.
    </li>
  </ul>`;
}
