import { sayDays, sayDaysShort, sayNumber } from "@stayput/charts";
import { html, svg, type TemplateResult } from "lit";
import type { DullWeeks, LeftOff } from "../facts/dullWeeks.ts";
import type { Option } from "../facts/options.ts";
import type { Handover } from "../handover.ts";
import { drivingSaid } from "../words/figures.ts";
import { letterMark, ruled, type Cell } from "./tables.ts";

/** What to do on dull weeks: when to act, how far to drive, and what to leave off. */
export const dullWeeksPart = (
  handover: Handover,
  options: readonly Option[],
  facts: DullWeeks,
  advice: string,
): TemplateResult =>
  html`<p>${advice}</p>
    <div class="pair">${noSun(handover, options)}${leaveOff(handover, options, facts)}</div>`;

function noSun({ explained, locale = "en" }: Handover, options: readonly Option[]): TemplateResult {
  const columns = [
    { head: "no sun at all" },
    { head: "reserve", figures: true },
    { head: "flat", figures: true },
    { head: "drive to 80 %", figures: true },
    { head: "to full", figures: true },
  ];
  const days = (value: number | null) => sayDays(value, explained.horizon_days, locale);
  const rows = options.map(({ letter, answer, setup, compared: { refill_h } }): Cell[] => [
    letterMark(letter),
    days(answer.reserveDays.dark),
    days(answer.days.dark),
    ...(setup.feed === null
      ? ["no feed", "–"]
      : [drivingSaid(refill_h.to80, locale), drivingSaid(refill_h.toFull, locale)]),
  ]);
  return html`<div>
    ${ruled(columns, rows, "tight")}
    <p class="note">Driving is from the reserve, without sun.</p>
  </div>`;
}

function leaveOff(
  { explained, locale = "en" }: Handover,
  options: readonly Option[],
  facts: DullWeeks,
): TemplateResult {
  const most_Wh = Math.max(...facts.leftOff.map(({ Wh_day }) => Wh_day), 1);
  const short = (days: number | null | undefined) =>
    days === undefined ? "–" : sayDaysShort(days, explained.horizon_days, locale);
  const columns = [
    { head: "usual days without" },
    { head: "" },
    { head: "Wh a day", figures: true },
    ...options.map(({ letter }) => ({ head: letterMark(letter), figures: true })),
  ];
  const everything: Cell[] = [
    "everything on",
    "",
    sayNumber(options[0]?.answer.use_Wh_day.total ?? 0, locale),
    ...options.map(({ answer }) => short(answer.days.drawn.p50)),
  ];
  const rows = facts.leftOff.map((load): Cell[] => [
    nameCell(load),
    useBar(load, most_Wh),
    sayNumber(load.Wh_day, locale),
    ...load.days.map(short),
  ]);
  return html`<div>
    ${ruled(columns, [everything, ...rows], "tight")}
    <p class="note">${leaveOffNote(facts)}</p>
  </div>`;
}

const nameCell = ({ name, isFridge }: LeftOff): TemplateResult =>
  html`<span class="unbroken"><bdi class="oneLine">${name}</bdi>${isFridge ? "*" : ""}</span>`;

function leaveOffNote({ leftOff, smaller }: DullWeeks): string {
  const fridge = leftOff.some(({ isFridge }) => isFridge) ? "* A fridge goes off only when it is empty." : "";
  const rest = smaller === 0 ? "" : `${smaller} smaller ${smaller === 1 ? "load is" : "loads are"} not listed.`;
  return `${fridge} ${rest}`.trim();
}

const barWidth_px = 44;

/** What it uses, as a bar: a flat tone with an ink edge, as every use is drawn. */
function useBar({ Wh_day }: LeftOff, most_Wh: number): TemplateResult {
  const width_px = Math.max(1, (Wh_day / most_Wh) * (barWidth_px - 2));
  return html`<svg class="picture bar" viewBox="0 0 44 9" width="44" height="9" aria-hidden="true">
    ${svg`<rect class="toneRest edge" x="1" y="1" width=${width_px.toFixed(1)} height="7"></rect>`}
  </svg>`;
}
