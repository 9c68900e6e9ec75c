import type { SetupAnswer, Spread } from "@stayput/sim";
import { chanceCell, count, daysSaid, percent } from "./numbers.ts";
import { plain } from "./plain.ts";

interface Held {
  readonly nights: number;
  readonly draws: number;
  readonly horizon_days: number;
}

/** What to say first about a setup: how long, how sure, and, unless it was said of the setup before, what takes most of it. */
export function sentence(setup: SetupAnswer, held: Held, before?: SetupAnswer): string {
  const most = mostOfIt(setup);
  return [
    `${plain(setup.name, 60)}: ${howLong(setup.days.drawn, held)}.`,
    `Chance of lasting the ${count(held.nights, "night")} as travelled: ${chanceCell(setup.chanceOfLasting, held.draws)}.`,
    ...(before !== undefined && mostOfIt(before) === most ? [] : [most]),
  ].join(" ");
}

function howLong({ p10, p50, p90 }: Spread, { draws, horizon_days }: Held): string {
  const said = (days: number | null): string => daysSaid(days, horizon_days);
  if (draws === 1)
    return `parked, under the one sky looked at, ${p50 === null ? "it lasts" : "it is flat after"} ${said(p50)}`;
  if (p10 === null) return `parked, it lasts ${said(p10)} under at least nine skies in ten`;
  if (p50 === null)
    return `parked, it lasts ${said(p50)} under half the skies, but the dullest tenth has it flat in ${said(p10)}`;
  if (said(p10) === said(p90)) return `parked, it is flat after ${said(p50)}, whatever the sky`;
  const bright = p90 === null ? `the brightest tenth carries it ${said(p90)}` : `the brightest not before ${said(p90)}`;
  return `parked, it is flat after ${said(p50)}; the dullest tenth of skies has it flat in ${said(p10)}, ${bright}`;
}

function mostOfIt({ use_Wh_day: { byLoad } }: SetupAnswer): string {
  const [first] = [...byLoad].sort((a, b) => b.Wh_day - a.Wh_day);
  if (first === undefined || !(first.Wh_day > 0)) return "Nothing draws on the bank.";
  return `Biggest user: ${plain(first.name, 40)}, ${percent(first.share)} of it all.`;
}
