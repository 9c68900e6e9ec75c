/** A line through points of rising x, held level beyond its ends. `points` must not be empty. */
export function alongLine(points: readonly (readonly [x: number, y: number])[], x: number): number {
  let [x0, y0] = points[0]!;
  if (x <= x0) return y0;
  for (const [x1, y1] of points) {
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
    [x0, y0] = [x1, y1];
  }
  return y0;
}
