import type { Study } from "../study.ts";
import type { CrossCheckAnswer, HeldPair } from "./crossCheck.ts";
import type { HandbookInputs, HandbookSize } from "./handbook.ts";
import { counted, outOf100 } from "./words.ts";

/** The difference between the two sizes in words, and what each would do. */
export function sayCrossCheck(
  { trip }: Study,
  { autonomy_days, ageing, depth, arrayToLoad }: HandbookInputs,
  { bank_Ah, array_W }: HandbookSize,
  simulated: CrossCheckAnswer["simulated"],
  held: CrossCheckAnswer["held"],
  shadeLost: number,
): string[] {
  const share = (x: number) => `${Math.round(x * 100)} %`;
  return [
    `Bank: the simulation asks ${beside(simulated.bank_Ah, bank_Ah)} the handbook's ${Math.round(bank_Ah)} Ah. The handbook carries ${counted(autonomy_days, "day")} without any sun, lets the bank age to ${share(ageing)} and draws ${share(depth)} of it; the simulation counts what even dull days bring, takes a new bank, and draws it down to the cut-off.`,
    `Array: the simulation asks ${beside(simulated.array_W, array_W)} the handbook's ${Math.round(array_W)} W. The handbook's array brings ${arrayToLoad} times the load, month in, month out; the simulation lets a full bank run down over the nights asked.${shade(shadeLost)}`,
    `On the trip as described (${counted(trip.nights, "night")}), the handbook's pair lasts on ${outOf100(held.handbook.chance)} trips and the simulated one on ${outOf100(held.simulated.chance)}.`,
    `Camped on without end in such weather, drawing no deeper than the handbook does, the handbook's pair falls short on ${daysIn(held.handbook)} and the simulated one on ${daysIn(held.simulated)}.`,
  ];
}

const beside = (simulated: number, handbook: number): string =>
  simulated < 0.9 * handbook ? "less than" : simulated > 1.1 * handbook ? "more than" : "about";

const shade = (lost: number): string =>
  lost < 0.01
    ? ""
    : ` The handbook knows of no shade; at this camp it takes about ${Math.round(lost * 100)} % of the sun.`;

/** A share of days as a round number of them. */
function daysIn({ shortDays }: HeldPair): string {
  if (shortDays > 0.99) return "nearly every day";
  if (shortDays < 0.001) return "fewer than 1 day in 1,000";
  return shortDays < 0.01
    ? `about ${Math.round(shortDays * 1000)} days in 1,000`
    : `about ${Math.round(shortDays * 100)} days in 100`;
}
