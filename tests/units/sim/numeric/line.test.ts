import { describe, expect, it } from "vitest";
import { alongLine } from "../../../../packages/sim/src/numeric/line.ts";

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
  it("of one point stands there everywhere", () => {
    expect([-1, 0, 1].map((x) => alongLine([[0, 7]], x))).toEqual([7, 7, 7]);
  });
});
