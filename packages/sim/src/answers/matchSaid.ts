import type { MatchExplanation, Observation, SeenShares } from "./matchTypes.ts";
import { capital, listed, monthName, outOf100 } from "./words.ts";

/** From this share of trips on, the job as it stands is explanation enough (chosen). */
const likelyEnough = 0.5;

/** What was seen, what the job as it stands makes of it, and what would explain it, most plausible first. */
export function sayMatch(
  seen: readonly Observation[],
  stated: readonly SeenShares[],
  explanations: readonly MatchExplanation[],
): string {
  const asItStands = seen.map((one, i) => statedSaid(one, stated[i]!)).join(" ");
  const explaining = explanations.filter(({ likely }) => likely !== null);
  if (explaining.length === 0) return `${asItStands} ${nothingSaid(stated, explanations)}`;
  const all = explaining.map(explainedSaid);
  const alone = all.length === 1 ? "" : " Each is taken alone: together, less of each is enough.";
  if (stated.every(({ then }) => then >= likelyEnough)) {
    return `${asItStands} Nothing need be other than stated. It would also happen where ${listed(all, "or")}.${alone}`;
  }
  const [first, ...others] = all;
  const rest = others.length === 0 ? "" : ` Less so: ${listed(others, "or")}.`;
  return `${asItStands} Most plausible: ${first!}.${rest}${alone}`;
}

function statedSaid({ flatOnMorning, month }: Observation, { before, then, after }: SeenShares): string {
  const trips = then === 0 ? "in no trip" : then === 1 ? "in every trip" : `in ${outOf100(then)} trips`;
  const often = Math.max(before, after) === 1 ? "it always" : "mostly it";
  const else_ = then >= 0.5 ? "" : before > after ? `; ${often} goes flat sooner` : `; ${often} lasts longer`;
  return `As the job stands, the bank would be found flat on the ${ordinal(flatOnMorning)} morning in ${monthName(month)} ${trips}${else_}.`;
}

/** "the bank has about 55 % of its rated capacity left (40 to 90 %)". */
function explainedSaid({ id, likely }: MatchExplanation): string {
  const { low, middle, high } = likely!;
  switch (id) {
    case "condition":
      return `the bank has about ${fifth(middle)} % of its rated capacity left (${fifth(low)} to ${fifth(high)} %)`;
    case "fridge":
      return `the fridge takes about ${middle.toFixed(1)} times its rating (${low.toFixed(1)} to ${high.toFixed(1)})`;
    case "shade":
      return `shade or dirt takes about ${fifth(middle)} % of the sun (${fifth(low)} to ${fifth(high)} %)`;
  }
}

/** Per cent, to the nearest five: the ranges are no finer. */
const fifth = (share: number): number => Math.round(share * 20) * 5;

function nothingSaid(stated: readonly SeenShares[], tried: readonly MatchExplanation[]): string {
  const them = tried.length === 1 ? "that" : "they";
  const names = capital(listed(tried.map(({ name }) => name)));
  const start = `${names} ${tried.length === 1 ? "does not explain" : "do not explain"} it, each taken alone.`;
  const sooner = stated.every(({ before, after }) => before >= after);
  const look = sooner
    ? `It lasted longer than ${them} would let it: look for a load that was off, or charge that the job leaves out.`
    : `It went flat sooner than ${them} would make it: look for a load that the job leaves out, a low charge at the start, or a charge that never arrived.`;
  return `${start} ${look}`;
}

function ordinal(count: number): string {
  const teens = count % 100 >= 11 && count % 100 <= 13;
  const ending = teens ? "th" : (["th", "st", "nd", "rd"][count % 10] ?? "th");
  return `${count}${ending}`;
}
