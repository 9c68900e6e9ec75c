import { rankOf } from "./quantile.ts";
import type { ChargeBand } from "./types.ts";

/** Shown charge is told to a tenth of a percent: finer is not to be seen, and a third of the bytes. */
const steps = 1000;

/**
 * P10, P50 and P90 of the shown charge, hour by hour, with the average and the dark sky beside them. Charge is rounded
 * first and ranked after, which comes to the same the other way round, so that ranks are read off a count of each step
 * instead of sorting every hour.
 * @param drawn shown charge under each drawn sky; where there is none yet, the average stands in
 */
export function bandOf(average: Float32Array, dark: Float32Array, drawn: readonly Float32Array[]): ChargeBand {
  const skies = drawn.length === 0 ? [average] : drawn;
  const ranks = [0.1, 0.5, 0.9].map((share) => rankOf(share, skies.length));
  const band = ranks.map(() => new Array<number>(average.length));
  const count = new Uint32Array(steps + 1);
  for (let hour = 0; hour < average.length; hour++) {
    const least = countSteps(count, skies, hour);
    readRanks(count, least, skies.length, ranks, band, hour);
  }
  const [p10, p50, p90] = band as [number[], number[], number[]];
  return { p10, p50, p90, average: Array.from(average, rounded), dark: Array.from(dark, rounded) };
}

const rounded = (charge: number): number => Math.round(charge * steps) / steps;

/** How many skies stand at each step in an hour. @returns the lowest step with any */
function countSteps(count: Uint32Array, skies: readonly Float32Array[], hour: number): number {
  let least = steps;
  for (let sky = 0; sky < skies.length; sky++) {
    const step = Math.round(skies[sky]![hour]! * steps);
    count[step]!++;
    if (step < least) least = step;
  }
  return least;
}

/** Reads rising ranks off the counts, and leaves the counts at nothing. */
function readRanks(
  count: Uint32Array,
  least: number,
  skies: number,
  ranks: readonly number[],
  band: readonly number[][],
  hour: number,
): void {
  let passed = 0;
  let next = 0;
  for (let step = least; step <= steps && passed < skies; step++) {
    passed += count[step]!;
    while (next < ranks.length && passed > ranks[next]!) band[next++]![hour] = step / steps;
    count[step] = 0;
  }
}
