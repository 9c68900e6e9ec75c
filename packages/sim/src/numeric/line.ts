/** Points of rising x. */
export type Points = readonly (readonly [x: number, y: number])[];

/** A line through points, held level beyond its ends. `points` must not be empty. */
export function alongLine(points: Points, x: number): number {
  let before = points[0]!;
  if (x <= before[0]) return before[1];
  for (let i = 1; i < points.length; i++) {
    const after = points[i]!;
    if (x <= after[0]) return before[1] + ((after[1] - before[1]) * (x - before[0])) / (after[0] - before[0]);
    before = after;
  }
  return before[1];
}

/**
 * The same line for one that is read over and over, mostly close to where it was read last: it keeps the stretch between
 * two points that it stood on. What it answers does not depend on that. Infinite x is not taken.
 */
export class ReadLine {
  /** of each stretch: where it starts, its line's height at 0, and its slope; the first and last are level */
  private readonly starts: Float64Array;
  private readonly at0s: Float64Array;
  private readonly slopes: Float64Array;
  private i = 0;
  /** where to move to: handed over in place, as a number that crosses a call would be boxed */
  private sought = NaN;
  /** the stretch last stood on: from here to there, its line's height at 0, and its slope; to be read and not written */
  from = NaN;
  to = NaN;
  at0 = NaN;
  slope = NaN;

  constructor(points: Points) {
    const stretches = points.map(([x, y], i) => {
      const [nextX, nextY] = points[i + 1] ?? [Infinity, y];
      const slope = (nextY - y) / (nextX - x);
      return { start: x, at0: y - slope * x, slope };
    });
    const all = [{ start: -Infinity, at0: points[0]![1], slope: 0 }, ...stretches];
    this.starts = Float64Array.from([...all.map(({ start }) => start), Infinity]);
    this.at0s = Float64Array.from(all, ({ at0 }) => at0);
    this.slopes = Float64Array.from(all, ({ slope }) => slope);
    this.sought = points[0]![0];
    this.move();
  }

  at(x: number): number {
    if (!(x >= this.from && x < this.to)) {
      this.sought = x;
      this.move();
    }
    return this.at0 + x * this.slope;
  }

  /** Goes on to the next stretch up. */
  higher(): void {
    this.sought = this.to;
    this.move();
  }

  /** Goes on to the next stretch down. */
  lower(): void {
    this.sought = this.starts[this.i - 1]!;
    this.move();
  }

  private move(): void {
    const { starts, sought: x } = this;
    let i = this.i;
    while (x < starts[i]!) i--;
    while (x >= starts[i + 1]!) i++;
    this.i = i;
    this.from = starts[i]!;
    this.to = starts[i + 1]!;
    this.at0 = this.at0s[i]!;
    this.slope = this.slopes[i]!;
  }
}
