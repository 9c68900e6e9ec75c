import { allThatLast, byPreference, withinBudget, withinPayload, type Place, type Sizing } from "./sizeChoice.ts";
import { knowLadder, laddersOf, pairOf, worstOf } from "./sizeLadder.ts";
import { asked, named } from "./sizeReason.ts";
import type { Obstacle, SizeRequest } from "./sizeTypes.ts";
import { makeTrial, meanBalance, reaches, type Trial } from "./trial.ts";
import { about, listed, monthName, outOf100 } from "./words.ts";

interface Told {
  readonly inTheWay: readonly Obstacle[];
  readonly said: string;
}

/** Why nothing on the ladder does it: each limit is told by what the ladder could do without it. */
export function whatStandsInTheWay(sizing: Sizing, miss: Place | null): Told {
  const lasting = allThatLast(sizing.walked);
  const { inTheWay, said } = lasting.length > 0 ? limitsMissed(sizing.request, lasting) : nothingLasts(sizing);
  return { inTheWay, said: `${said} ${nearestSaid(sizing.request, miss)}` };
}

function nearestSaid(request: SizeRequest, miss: Place | null): string {
  if (miss === null) return `No pair at all fits ${listed(limitsOf(request))}.`;
  const { chance, month } = worstOf(miss.ladder, miss.b, miss.a);
  const within = limitsOf(request).length === 0 ? "" : " within them";
  return `The nearest${within} is ${named(miss.pair)}, which lasts on ${outOf100(chance)} trips in ${monthName(month)}.`;
}

const limitsOf = ({ roof_W, budget, payload_kg }: SizeRequest): string[] => [
  ...(roof_W === null ? [] : ["the roof"]),
  ...(budget === null ? [] : ["the budget"]),
  ...(payload_kg === null ? [] : ["the payload"]),
];

/** Some pairs last, and none is within budget and payload. */
function limitsMissed(request: SizeRequest, lasting: readonly Place[]): Told {
  const pairs = lasting.map(({ pair }) => pair).sort(byPreference);
  const first = pairs[0]!;
  const unknown: Obstacle[] = [
    ...(request.budget !== null && pairs.every(({ price }) => price === null) ? ["prices-not-known" as const] : []),
    ...(request.payload_kg !== null && pairs.every(({ mass_kg }) => mass_kg === null)
      ? ["masses-not-known" as const]
      : []),
  ];
  if (unknown.length > 0) {
    const what = listed(unknown.map((each) => (each === "prices-not-known" ? "prices" : "masses")));
    return { inTheWay: unknown, said: `${named(first)} would last ${asked(request)}, but ${what} are not known.` };
  }
  const overBudget = !pairs.some((pair) => withinBudget(pair, request));
  const overPayload = !pairs.some((pair) => withinPayload(pair, request));
  const inTheWay: Obstacle[] = overBudget === overPayload ? ["budget", "payload"] : [overBudget ? "budget" : "payload"];
  const price = first.price === null ? "" : ` for ${first.price.toLocaleString("en-GB")}`;
  const mass = first.mass_kg === null ? "" : ` at ${Math.round(first.mass_kg)} kg`;
  return {
    inTheWay,
    said: `${named(first)} would last ${asked(request)}${price}${mass}, but not within the ${listed(inTheWay)}.`,
  };
}

/**
 * No pair lasts: the roof, if a larger array of the ladder would do; else the charge on arrival, if a full bank would; else
 * the month's sun, if another month would; else the load.
 */
function nothingLasts(sizing: Sizing): Told {
  const { request, trials } = sizing;
  const start = `Nothing on the ladder lasts ${asked(request)}.`;
  const offRoof = largestReaching(sizing, trials, { ...request, roof_W: null });
  if (offRoof !== null) {
    return {
      inTheWay: ["roof"],
      said: `${start} The roof stands in the way: it takes ${request.roof_W} W, and ${named(offRoof)} would do.`,
    };
  }
  const fromFull = largestReaching(sizing, trialsFromFull(sizing), request);
  if (fromFull !== null) {
    const arrives = `the bank arrives at ${Math.round(sizing.study.trip.startCharge * 100)} %`;
    const said = `The charge on arrival stands in the way: ${arrives}, and ${named(fromFull)} would do if it came full.`;
    return { inTheWay: ["start"], said: `${start} ${said}` };
  }
  const worst = trials.reduce((a, b) => (sunOf(b) < sunOf(a) ? b : a));
  const best = bestMonth(sizing);
  const inBest = largestReaching(sizing, [best], { ...request, roof_W: null });
  const balance = balanceSaid(worst, Math.max(...request.arrays.map(({ watts }) => watts)));
  if (inBest !== null) {
    const sun = `The sun of ${monthName(worst.month)} stands in the way: ${balance}`;
    return { inTheWay: ["sun"], said: `${start} ${sun} In ${monthName(best.month)} the largest pair would do.` };
  }
  const load = `What runs stands in the way: ${balance} Not even ${monthName(best.month)} would be sunny enough; a smaller load or charging on the way is needed.`;
  return { inTheWay: ["load"], said: `${start} ${load}` };
}

/** The same trips with a full bank on arrival; none where it is full already. */
function trialsFromFull({ study, setup, request, skies }: Sizing): Trial[] {
  if (study.trip.startCharge === 1) return [];
  const full = { ...study, trip: { ...study.trip, startCharge: 1 } };
  return request.months.map((month) => makeTrial(full, setup, month, request.nights, skies));
}

const sunOf = (trial: Trial): number => meanBalance(trial).sunPerWatt_Wh_day;

function balanceSaid(trial: Trial, most_W: number): string {
  const { load_Wh_day, sunPerWatt_Wh_day } = meanBalance(trial);
  const use = `about ${about(load_Wh_day)} Wh a day are used`;
  if (most_W === 0) return `${use} and there are no panels on the ladder.`;
  return `${use}, and the largest array, ${most_W} W, brings about ${about(most_W * sunPerWatt_Wh_day)} Wh on a usual day.`;
}

/** The month with the most sun on the level, as a trial. */
function bestMonth({ study, setup, request, skies }: Sizing): Trial {
  const { ghi_kWh_m2_day } = study.climate;
  const month = ghi_kWh_m2_day.indexOf(Math.max(...ghi_kWh_m2_day)) + 1;
  return makeTrial(study, setup, month, request.nights, skies);
}

/** The largest pair of any chemistry, where it does it in every one of the trials. */
function largestReaching({ setup }: Sizing, trials: readonly Trial[], request: SizeRequest) {
  if (trials.length === 0) return null;
  for (const ladder of laddersOf(request).map((each) => knowLadder(trials, setup, each))) {
    const [b, a] = [ladder.banks.length - 1, ladder.arrays.length - 1];
    if (b < 0 || a < 0) continue;
    if (ladder.months.every((known) => reaches(known, b, a, request.chance))) return pairOf(ladder, b, a);
  }
  return null;
}
