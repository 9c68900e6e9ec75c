import { expect, it } from "vitest";
import { normalCdf } from "../../../../packages/sim/src/numeric/normalCdf.ts";
import { normalQuantile } from "../../../../packages/sim/src/numeric/normalQuantile.ts";

// Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.1 (first column, 15 figures) and table 26.5.
it.each([
  [0, 0.5],
  [1, 0.841344746068543],
  [2, 0.977249868051821],
  [3, 0.99865010196837],
])("P(%f) is the tabled value", (x, p) => {
  expect(Math.abs(normalCdf(x) - p)).toBeLessThan(1e-14);
  expect(Math.abs(normalCdf(-x) - (1 - p))).toBeLessThan(1e-14);
});
it.each([
  [0.025, -1.959963984540054],
  [0.1, -1.2815515655446],
  [0.999, 3.090232306167813],
])("the quantile of %f is the tabled value", (p, x) => expect(normalQuantile(p)).toBeCloseTo(x, 13));
it("is its own inverse, far into the tails", () => {
  for (let x = -6.3; x <= 6.3; x += 0.01) expect(Math.abs(normalQuantile(normalCdf(x)) - x)).toBeLessThan(1e-7);
});
it("has no tail beyond doubles", () =>
  expect([normalCdf(-40), normalCdf(40), normalQuantile(0)]).toEqual([0, 1, -Infinity]));
it("refuses what is no chance", () => expect(() => normalQuantile(1.1)).toThrow(/chance must be 0 to 1, got 1.1/));
