import { describe, expect, it } from "vitest";
import { alongLine, ReadLine } from "../../../../packages/sim/src/numeric/line.ts";

describe("a line through points", () => {
  const points = [
    [1, 10],
    [2, 20],
    [4, 0],
  ] as const;
  it.each([
    [-5, 10],
    [1, 10],
    [1.5, 15],
    [2, 20],
    [3, 10],
    [4, 0],
    [9, 0],
  ])("at %d stands at %d", (x, y) => expect(alongLine(points, x)).toBe(y));
  it("read over and over answers the same, whatever was read before", () => {
    const line = new ReadLine(points);
    for (const x of [3, -5, 9, 1, 1.5, 4, 2, 1.999, 2, -1e9, 1e9, 3.5, 0])
      expect(line.at(x), `at ${x}`).toBeCloseTo(alongLine(points, x), 12);
  });
  it("read at no number gives none", () => expect(new ReadLine(points).at(NaN)).toBeNaN());
  it("of one point stands there everywhere", () => {
    const line = new ReadLine([[0, 7]]);
    expect([-1, 0, 1].map((x) => alongLine([[0, 7]], x))).toEqual([7, 7, 7]);
    expect([-1, 0, 1].map((x) => line.at(x))).toEqual([7, 7, 7]);
  });
});
