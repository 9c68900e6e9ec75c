/** Share of the weight that a range holds. */
const held = 0.95;
/** Ranges looked at: beginning with so many parts of what is left outside below them. */
const parts = 50;

export interface Likely {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * Middle, and the shortest range that holds 95 % of the weight, of evenly spread values weighed by how often each explains
 * what was seen; null where none does. The shortest, so that an end of the spread (a new bank, no shade) stays inside where
 * it explains as well as its neighbours. Each value stands for its cell, and the range ends at the edges of cells; each
 * lends half of its weight to the two beside it: what happens between two values tried, and under a sky not drawn, is not
 * known better than that.
 * @param values evenly spaced, rising, at least two
 * @param weights as many, 0 or more
 */
export function posteriorOf(values: readonly number[], weights: readonly number[]): Likely | null {
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(whole > 0)) return null;
  const spread = lent(weights);
  const at = (share: number): number => valueAt(values, spread, share * whole);
  let best = { below: 0.5, width: Infinity };
  for (const below of fromTheMiddle()) {
    const start = below * (1 - held);
    const width = at(start + held) - at(start);
    if (width < best.width - 1e-9) best = { below, width };
  }
  const start = best.below * (1 - held);
  const edge = edgesOf(values);
  return { low: edge(at(start), Math.floor), middle: at(0.5), high: edge(at(start + held), Math.ceil) };
}

/** Rounding in the last places must not take an edge for the cell beyond it. */
const tidy = (cells: number): number => Math.round(cells * 1e6) / 1e6;

/** Takes a value out to the edge of its cell; to a thousandth, so that an edge reads as what it is. */
function edgesOf(values: readonly number[]): (value: number, round: (x: number) => number) => number {
  const cell = values[1]! - values[0]!;
  const first = values[0]! - cell / 2;
  return (value, round) => Math.round((first + cell * round(tidy((value - first) / cell))) * 1000) / 1000;
}

/** A quarter to either side; what would leave at an end stays. */
const lent = (weights: readonly number[]): number[] =>
  weights.map((weight, i) => (2 * weight + (weights[i - 1] ?? weight) + (weights[i + 1] ?? weight)) / 4);

/** Shares of the outside that lie below the range, the even one first: it stands where others are no shorter. */
const fromTheMiddle = (): number[] =>
  Array.from({ length: parts + 1 }, (_, i) => i / parts).sort((a, b) => Math.abs(a - 0.5) - Math.abs(b - 0.5));

/** The value below which so much weight lies. */
function valueAt(values: readonly number[], weights: readonly number[], wanted: number): number {
  const cell = values[1]! - values[0]!;
  const rounding = 1e-12 * wanted;
  let below = 0;
  let end = values[0]! - cell / 2;
  for (const [i, weight] of weights.entries()) {
    if (weight > 0) {
      const start = values[i]! - cell / 2;
      if (below + weight >= wanted - rounding) return start + cell * Math.min(1, (wanted - below) / weight);
      end = start + cell;
    }
    below += weight;
  }
  return end;
}
