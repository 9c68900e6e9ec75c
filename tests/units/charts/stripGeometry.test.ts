import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stripGeometry } from "@stayput/charts";

const strip = stripGeometry(10, 480);

describe("the 24-hour strip", () => {
  it("brings every quarter hour back from its own place", () => {
    for (let quarters = 0; quarters <= 96; quarters++)
      expect(strip.hourAt(strip.pxAt(quarters / 4))).toBe(quarters / 4);
  });
  it("snaps to the quarter and stays within the day", () => {
    expect(strip.hourAt(10 + 480 * (7.1 / 24))).toBe(7);
    expect(strip.hourAt(-100)).toBe(0);
    expect(strip.hourAt(9000)).toBe(24);
  });
  it("cuts a window at midnight, and its pieces are as long as the window", () => {
    const hour = fc.integer({ min: 0, max: 96 }).map((n) => n / 4);
    fc.assert(
      fc.property(hour, hour, (from, to) => {
        const hours = strip.pieces(from, to).reduce((total, { width }) => total + (width / 480) * 24, 0);
        expect(hours).toBeCloseTo(from < to ? to - from : 24 - from + to, 9);
        for (const { x, width } of strip.pieces(from, to)) {
          expect(x).toBeGreaterThanOrEqual(10 - 1e-9);
          expect(x + width).toBeLessThanOrEqual(490 + 1e-9);
        }
      }),
    );
  });
  it("refuses a strip of no width", () => {
    expect(() => stripGeometry(0, 0)).toThrow(RangeError);
    expect(() => stripGeometry(0, NaN)).toThrow(RangeError);
  });
});
