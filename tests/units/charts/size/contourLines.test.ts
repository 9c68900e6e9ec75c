import { describe, expect, it } from "vitest";
import type { SizeGrid } from "@stayput/sim";
import { contourLevels } from "../../../../packages/charts/src/size/contourLines.ts";

const grid = (chance: number[][]): SizeGrid => ({
  chemistry: "lfp",
  banks_Ah: chance.map((_, b) => 100 * (b + 1)),
  arrays_W: (chance[0] ?? []).map((_, a) => 100 * a),
  chance,
});

describe("contours", () => {
  it("run where the chance is reached between two rungs, straight up when the bank does not matter", () => {
    // chance rises 0, 0.5, 1 with the array alone: 0.75 lies half way between the second and third rung
    const [level] = contourLevels(
      grid([
        [0, 0.5, 1],
        [0, 0.5, 1],
        [0, 0.5, 1],
      ]),
      [0.75],
    );
    expect(level?.lines).toHaveLength(1);
    for (const [array] of level!.lines[0]!) expect(array).toBeCloseTo(1.5, 9);
    const banks = level!.lines[0]!.map(([, bank]) => bank);
    expect([Math.min(...banks), Math.max(...banks)]).toEqual([0, 2]);
  });
  it("leave no line where every size lasts, or none does", () => {
    for (const chance of [0, 1]) {
      const [level] = contourLevels(
        grid([
          [chance, chance],
          [chance, chance],
        ]),
        [0.5],
      );
      expect(level?.lines).toEqual([]);
      expect(level?.rings.length).toBe(chance);
    }
  });
  it("need two rungs each way", () => {
    expect(contourLevels(grid([[0, 1]]), [0.5])).toEqual([]);
    expect(contourLevels(grid([[0], [1]]), [0.5])).toEqual([]);
  });
  it("refuse a hole in the grid, by its place", () => {
    expect(() =>
      contourLevels(
        grid([
          [0, 1],
          [0, NaN],
        ]),
        [0.5],
      ),
    ).toThrow(/chance\[1\]\[1\]/);
  });
});
