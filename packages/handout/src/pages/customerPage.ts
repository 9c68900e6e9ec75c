import { chargeChart, sayDays, sayNumber, sayRange } from "@stayput/charts";
import { html, nothing, type TemplateResult } from "lit";
import { assumptions, placeSaid } from "../facts/assumptions.ts";
import { howLong } from "../facts/howLong.ts";
import { optionsOf, type Option } from "../facts/options.ts";
import { forCustomer } from "../facts/toMind.ts";
import type { Handover } from "../handover.ts";
import { massChangeSaid, monthDaySaid, outOf100, priceSaid } from "../words/figures.ts";
import { headline } from "../words/headline.ts";
import { dullWeeksPart } from "./dullWeeksPart.ts";
import { masthead, titled } from "./masthead.ts";
import { letterMark, letterMarks, lineSample, numbered, ruled, type Cell } from "./tables.ts";

/** More options than this do not fit one page beside the rest; the fitter's pages have them all. */
export const MOST_OPTIONS = 6;
const mostCautions = 5;

/**
 * The page that is handed over: A4, one side. Place it with `handoutStyles` and `chartStyles`.
 * @throws RangeError where an answer is missing, or the date or the logo is not as it must be
 */
export function customerPage(handover: Handover): TemplateResult {
  const all = optionsOf(handover);
  const options = all.slice(0, MOST_OPTIONS);
  const { explained, study, locale = "en" } = handover;
  const stay = `${explained.nights} ${explained.nights === 1 ? "night" : "nights"} from ${monthDaySaid(study.trip.month, study.trip.day, locale)}`;
  return html`<article class="handout sheet customer">
    ${masthead(handover, "Estimate for planning")}${titled(handover, `${placeSaid(handover.place)}; ${stay}.`)}
    ${numbered(1, "The short of it", shortOfIt(handover), "short")}
    ${numbered(2, "How long it lasts", picture(handover, options), "long")}
    ${numbered(3, "Options side by side", sideBySide(handover, options, all.length))}
    ${numbered(4, "When the sun stays away", dullWeeksPart(handover, options))}
    ${numbered(5, "To mind", cautions(options))}${smallPrint(handover, all)}
  </article>`;
}

function shortOfIt(handover: Handover): TemplateResult {
  const { lasts, why, better } = headline(handover);
  return html`<p class="lead">${lasts}</p>
    <p>${why}${better === null ? nothing : html` ${better}`}</p>`;
}

function picture(handover: Handover, options: readonly Option[]): TemplateResult {
  const height_px = options.length > 4 ? 250 : 215;
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
  return html`${ruled(columns, rows, "options")}
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

function cautions(options: readonly Option[]): TemplateResult {
  const all = forCustomer(options);
  const shown = all.slice(0, mostCautions);
  return html`<ul class="marks">
    ${shown.map(({ letters, row }) => html`<li>${letterMarks(letters, options.length)}${row}</li>`)}
    ${all.length > shown.length ? html`<li>${all.length - shown.length} more are on the fitter's page.</li>` : nothing}
    <li>
      Batteries give very large currents; mains, gas and lithium have rules of their own. Have the work done to the
      local code, by trades licensed for it.
    </li>
  </ul>`;
}

const mostAssumptions = 12;

function smallPrint(handover: Handover, options: readonly Option[]): TemplateResult {
  const said = assumptions(handover, options);
  // the sources stand last and are never left out
  const kept = said.length > mostAssumptions ? [...said.slice(0, mostAssumptions - 3), ...said.slice(-3)] : said;
  return html`<footer class="small">
    <p><b>Estimate for planning, not a promise.</b> ${kept.join(" ")}</p>
  </footer>`;
}
