/** What lies outside the range, half on either side. */
const outside = 0.05;

/**
 * Middle and range of evenly spread values weighed by how often each explains what was seen; null where none does.
 * Each value stands for its cell, so the range is not finer than the spread.
 * @param values evenly spaced, rising, at least two
 * @param weights as many, 0 or more
 */
export function posteriorOf(
  values: readonly number[],
  weights: readonly number[],
): { readonly low: number; readonly middle: number; readonly high: number } | null {
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(whole > 0)) return null;
  const cell = values[1]! - values[0]!;
  const at = (share: number): number => {
    let below = 0;
    for (const [i, weight] of weights.entries()) {
      if (weight > 0 && below + weight >= share * whole) {
        return values[i]! - cell / 2 + (cell * (share * whole - below)) / weight;
      }
      below += weight;
    }
    return values.at(-1)! + cell / 2;
  };
  return { low: at(outside / 2), middle: at(0.5), high: at(1 - outside / 2) };
}
