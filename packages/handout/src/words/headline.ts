import { sayDays, sayMonth, sayPercent, sayRange } from "@stayput/charts";
import { optionsOf, type Option } from "../facts/options.ts";
import type { Handover } from "../handover.ts";
import { bounded } from "./bounded.ts";
import { momentSaid, outOf100, sentenceLocale } from "./figures.ts";

/** What a customer is told, in a sentence or two each. */
export interface Headline {
  /** how long what is fitted lasts */
  readonly lasts: string;
  /** how sure, and what takes most of it */
  readonly why: string;
  /** which proposal has the best chance; null where there is none */
  readonly better: string | null;
}

/** The short of it: how many days, how sure, what takes most of it, and what would serve better. */
export function headline(handover: Handover): Headline {
  const [first, ...others] = optionsOf(handover);
  if (first === undefined) return { lasts: "Nothing is fitted yet.", why: "", better: null };
  return {
    lasts: lastsSaid(first, handover),
    why: [chanceSaid(first, handover), takesSaid(first, handover)].filter(Boolean).join(" "),
    better: betterSaid(first, others, handover),
  };
}

function lastsSaid({ name, answer }: Option, { place, study, explained, locale = "en" }: Handover): string {
  const { p10, p50, p90 } = answer.days.drawn;
  const where = `at ${bounded(place.name, 40)} in ${sayMonth(study.trip.month, sentenceLocale(locale), "long")}`;
  const middle = sayDays(p50, explained.horizon_days, locale);
  const flat = p50 === null ? "" : `, flat ${momentSaid(p50)}`;
  const range = sayRange(p10, p90, explained.horizon_days, locale);
  const skies = range === middle ? "" : `; ${range} under eight skies in ten`;
  return `${bounded(name, 40)}: parked ${where} it lasts ${middle}${flat}${skies}.`;
}

const nightsSaid = (nights: number): string => (nights === 1 ? "the night" : `all ${nights} nights`);

const chanceSaid = ({ answer }: Option, { explained: { draws, nights } }: Handover): string =>
  `Of trips like this one, ${outOf100(answer.chanceOfLasting, draws)} last ${nightsSaid(nights)}.`;

function takesSaid({ answer }: Option, { locale = "en" }: Handover): string {
  const most = answer.use_Wh_day.byLoad.toSorted((a, b) => b.Wh_day - a.Wh_day)[0];
  if (most === undefined || !(most.Wh_day > 0)) return "";
  return `Biggest user: ${bounded(most.name, 40)}, ${sayPercent(most.share, locale)} of it all.`;
}

function betterSaid(first: Option, others: readonly Option[], handover: Handover): string | null {
  const { explained, locale = "en" } = handover;
  const [best] = others.toSorted(
    (a, b) => b.answer.chanceOfLasting - a.answer.chanceOfLasting || a.setup.price - b.setup.price,
  );
  if (best === undefined) return null;
  if (!(best.answer.chanceOfLasting > first.answer.chanceOfLasting)) return "No proposal here has a better chance.";
  const days = sayDays(best.answer.days.drawn.p50, explained.horizon_days, locale);
  const chance = outOf100(best.answer.chanceOfLasting, explained.draws);
  return `The best chance has ${best.letter}, ${bounded(best.name, 50)}: ${days}, and ${chance} trips last.`;
}
