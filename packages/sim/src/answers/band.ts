import { shownCharge, type ChargeScale } from "../bank/bankModel.ts";
import { rankOf } from "./quantile.ts";
import type { ChargeBand } from "./types.ts";

/** Shown charge is told to a tenth of a percent: finer is not to be seen, and a third of the bytes. */
const steps = 1000;
/** One row of counts an hour, of 0 to all steps. */
const row = steps + 1;
/** Hours counted side by side, so that each sky is read along and the counts still lie in the nearest cache. */
const block = 16;

/**
 * P10, P50 and P90 of the shown charge, hour by hour, with the average and the dark sky beside them. Charge is rounded
 * first and ranked after, which comes to the same the other way round, so that ranks are read off a count of each step
 * instead of sorting every hour.
 * @param average charge held under the average sky [Ah], as the others
 * @param drawn the same under each drawn sky; where there is none yet, the average stands in
 */
export function bandOf(
  bank: ChargeScale,
  average: Float64Array,
  dark: Float64Array,
  drawn: readonly Float64Array[],
): ChargeBand {
  const skies = drawn.length === 0 ? [average] : drawn;
  const ranks = [0.1, 0.5, 0.9].map((share) => rankOf(share, skies.length));
  const band = ranks.map(() => new Array<number>(average.length));
  const counts = new Uint32Array(block * row);
  for (let from = 0; from < average.length; from += block) {
    const to = Math.min(average.length, from + block);
    for (const sky of skies) countSteps(counts, bank, sky, from, to);
    for (let hour = from; hour < to; hour++) {
      readRanks(counts, (hour - from) * row, ranks, band, hour);
    }
    counts.fill(0);
  }
  const [p10, p50, p90] = band as [number[], number[], number[]];
  const rounded = (held_Ah: number): number => stepOf(bank, held_Ah) / steps;
  return { p10, p50, p90, average: Array.from(average, rounded), dark: Array.from(dark, rounded) };
}

/** To the nearest; charge is never below nothing, so cutting off will do. */
const stepOf = (bank: ChargeScale, held_Ah: number): number => (shownCharge(bank, held_Ah) * steps + 0.5) | 0;

function countSteps(counts: Uint32Array, bank: ChargeScale, sky: Float64Array, from: number, to: number): void {
  for (let hour = from; hour < to; hour++) counts[(hour - from) * row + stepOf(bank, sky[hour]!)]!++;
}

/** Reads the charge at each of some rising ranks off one hour's counts. */
function readRanks(
  counts: Uint32Array,
  first: number,
  ranks: readonly number[],
  band: readonly number[][],
  hour: number,
): void {
  let passed = 0;
  let next = 0;
  for (let step = 0; step <= steps && next < ranks.length; step++) {
    passed += counts[first + step]!;
    while (next < ranks.length && passed > ranks[next]!) band[next++]![hour] = step / steps;
  }
}
