import { mustBeWhole, mustLie } from "../numeric/must.ts";

/** What a day may do to a store, in whole steps of it, and how often. */
export interface DailyChange {
  /** up where the sun brings more than is used */
  readonly steps: number;
  readonly chance: number;
}

/** Days walked at most; a store of a hundred steps has settled long before. */
const longest_days = 200_000;
const settled = 1e-13;

/**
 * The share of days, in the long run, on which a store that each day fills or empties by a chance amount falls short of
 * the load: a walk between empty and full, what is over at either end lost.
 * Source: reflecting random walk and its stationary distribution, as in Gordon 1987 (sizing by random walk).
 * @param store_steps steps that the store holds, 1 to 500; it begins full
 * @param changes chances sum to 1
 * @returns 0 to 1
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function lossOfLoad(store_steps: number, changes: readonly DailyChange[]): number {
  check(store_steps, changes);
  let at = new Float64Array(store_steps + 1);
  let next = new Float64Array(store_steps + 1);
  at[store_steps] = 1;
  for (let day = 0; day < longest_days; day++) {
    halfStep(at, next, changes);
    const moved = next.reduce((most, share, i) => Math.max(most, Math.abs(share - at[i]!)), 0);
    [at, next] = [next, at];
    if (moved < settled) break;
  }
  return shortIn(at, changes);
}

/** A day, made on half of all days: the same in the long run, and a walk that swings to and fro settles too. */
function halfStep(at: Float64Array, next: Float64Array, changes: readonly DailyChange[]): void {
  const full = at.length - 1;
  for (let i = 0; i <= full; i++) next[i] = at[i]! / 2;
  for (const { steps, chance } of changes) {
    for (let i = 0; i <= full; i++) next[Math.max(0, Math.min(full, i + steps))]! += (at[i]! * chance) / 2;
  }
}

const shortIn = (at: Float64Array, changes: readonly DailyChange[]): number =>
  changes.reduce(
    (sum, { steps, chance }) => sum + chance * at.reduce((short, share, i) => short + (i + steps < 0 ? share : 0), 0),
    0,
  );

function check(store_steps: number, changes: readonly DailyChange[]): void {
  mustBeWhole("store_steps", store_steps, 1, 500);
  changes.forEach(({ steps, chance }, i) => {
    mustBeWhole(`changes[${i}].steps`, steps, -1e9, 1e9);
    mustLie(`changes[${i}].chance`, chance, 0, 1);
  });
  const whole = changes.reduce((sum, { chance }) => sum + chance, 0);
  if (!(Math.abs(whole - 1) < 1e-9)) throw new RangeError(`changes: chances must sum to 1, got ${whole}`);
}
