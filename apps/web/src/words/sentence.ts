import { chanceInWords, sayDays, sayDaysShort, sayList, sayMonth, sayPercent } from "@stayput/charts";
import type { ExplainAnswer, SetupAnswer } from "@stayput/sim";
import type { Read } from "../worker/protocol.ts";
import { locale } from "./locale.ts";

/** What a customer is told: one sentence for what is fitted, then a short one for each proposal. */
export interface Said {
  readonly lead: string;
  readonly takes: string;
  readonly others: readonly { readonly name: string; readonly says: string }[];
  /** for the top edge of a phone */
  readonly short: readonly { readonly name: string; readonly days: string }[];
}

export function sentence(answer: ExplainAnswer, { place, study, stranded }: Read): Said {
  const [first, ...others] = answer.setups;
  if (first === undefined) return { lead: "", takes: "", others: [], short: [] };
  const month = sayMonth(study.trip.month, locale(), "long");
  return {
    lead: `${first.name}: at ${place.name} in ${month} it ${lastsText(first, answer)}. ${chanceText(first, answer)}${withoutText(stranded[first.id], " Not running, for want of an inverter: ", ".")}`,
    takes: takesText(first),
    others: others.map((setup) => ({
      name: setup.name,
      says: `${lastsText(setup, answer)}; ${sureText(setup, answer)}${withoutText(stranded[setup.id], "; not running, for want of an inverter: ", "")}`,
    })),
    short: shortOf(answer),
  };
}

/** As many as leave room for the sheet beneath. */
const mostPinned = 6;

function shortOf(answer: ExplainAnswer): Said["short"] {
  const all = answer.setups.map((setup) => ({ name: setup.name, days: daysText(setup, answer) }));
  if (all.length <= mostPinned) return all;
  const shown = all.slice(0, mostPinned - 1);
  return [...shown, { name: `and ${all.length - shown.length} more`, days: "" }];
}

const daysText = ({ days: { drawn } }: SetupAnswer, { horizon_days }: ExplainAnswer): string =>
  drawn.p50 === null
    ? `${sayDaysShort(null, horizon_days, locale())} days`
    : sayDays(drawn.p50, horizon_days, locale());

function lastsText({ days }: SetupAnswer, { horizon_days }: ExplainAnswer): string {
  const { p10, p50, p90 } = days.drawn;
  if (p10 === null) return `does not run flat within ${horizon_days} days`;
  const low = sayDaysShort(p10, horizon_days, locale());
  if (p50 === null)
    return `mostly keeps going, though one sky in ten has it flat in ${sayDays(p10, horizon_days, locale())}`;
  const middle = sayDays(p50, horizon_days, locale());
  const high = sayDaysShort(p90, horizon_days, locale());
  return low === high
    ? `goes flat after ${middle}`
    : `goes flat after ${middle} (eight skies in ten: ${low} to ${high})`;
}

const nightsText = (nights: number): string => (nights === 1 ? "the night" : `all ${nights} nights`);

const sureText = ({ chanceOfLasting }: SetupAnswer, { nights }: ExplainAnswer): string =>
  `chance of lasting ${nightsText(nights)} ${chanceInWords(chanceOfLasting, locale())}`;

const chanceText = ({ chanceOfLasting }: SetupAnswer, { nights }: ExplainAnswer): string =>
  `The chance of lasting ${nightsText(nights)} of the trip is ${chanceInWords(chanceOfLasting, locale())}.`;

/** What a setup does without for want of an inverter, lest it look the better for it. */
const withoutText = (names: readonly string[] = [], before: string, after: string): string =>
  names.length === 0 ? "" : `${before}${sayList(names)}${after}`;

function takesText({ use_Wh_day }: SetupAnswer): string {
  const [most, next] = use_Wh_day.byLoad;
  if (most === undefined || !(most.Wh_day > 0)) return "Nothing draws on it yet.";
  const share = sayPercent(most.share, locale());
  const second =
    next === undefined || next.share < 0.1 ? "" : `; then, with ${sayPercent(next.share, locale())}, ${next.name}`;
  if (use_Wh_day.byLoad.length === 1) return `All of it goes to ${most.name}.`;
  const lead = most.share > 0.5 ? "Most of it goes to" : "The largest share goes to";
  return `${lead} ${most.name}: ${share} of what goes out${second}.`;
}
