import type { Days, Spread } from "./types.ts";

/**
 * Nearest-rank quantile of a sorted series: the smallest value that at least the share of all do not exceed. "Did not run
 * down" sorts last and so keeps its place, which an average between ranks would not.
 */
export function nearestRank(sorted: ArrayLike<number>, share: number): number {
  if (sorted.length === 0) throw new RangeError("quantile needs at least one value, got none");
  return sorted[rankOf(share, sorted.length)]!;
}

/** Where that value stands among so many sorted ones, from 0. */
export const rankOf = (share: number, count: number): number => Math.max(0, Math.ceil(share * count - 1e-9) - 1);

/** Hours (NaN: did not happen) as days; null where it did not. */
export const daysOf = (hours: number): Days => (hours >= 0 && hours < Infinity ? hours / 24 : null);

/** P10, P50 and P90 of hours (NaN: did not happen), as days. */
export function spreadOf(hours: ArrayLike<number>): Spread {
  const sorted = Float64Array.from(hours, (h) => (h >= 0 ? h : Infinity)).sort();
  return {
    p10: daysOf(nearestRank(sorted, 0.1)),
    p50: daysOf(nearestRank(sorted, 0.5)),
    p90: daysOf(nearestRank(sorted, 0.9)),
  };
}
