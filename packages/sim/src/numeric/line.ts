/** A line through points of rising x, held level beyond its ends. `points` must not be empty. */
export function alongLine(points: readonly (readonly [x: number, y: number])[], x: number): number {
  let before = points[0]!;
  if (x <= before[0]) return before[1];
  for (let i = 1; i < points.length; i++) {
    const after = points[i]!;
    if (x <= after[0]) return before[1] + ((after[1] - before[1]) * (x - before[0])) / (after[0] - before[0]);
    before = after;
  }
  return before[1];
}
