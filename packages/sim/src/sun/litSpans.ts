/** A stretch of hour angle with the sun up, brought within ±sunset [rad]. */
export interface LitSpan {
  readonly from_rad: number;
  readonly to_rad: number;
}

/**
 * The parts of a stretch of time in which the sun is up. A stretch that runs over solar midnight may have two: the evening
 * of one day and the small hours of the next, which under the midnight sun join without a gap.
 *
 * @param from_rad hour angle at its start, any turn [rad]
 * @param length_rad its length, 0 to 2π [rad]
 * @param sunset_rad sunset hour angle, 0 to π [rad]
 */
export function litSpans(from_rad: number, length_rad: number, sunset_rad: number): LitSpan[] {
  const turn = 2 * Math.PI;
  const from = from_rad - turn * Math.floor((from_rad + Math.PI) / turn); // -π to π
  const spans: LitSpan[] = [];
  for (const shift of [0, turn]) {
    const lo = Math.max(from - shift, -sunset_rad);
    const hi = Math.min(from - shift + length_rad, sunset_rad);
    if (hi > lo) spans.push({ from_rad: lo, to_rad: hi });
  }
  return spans;
}
