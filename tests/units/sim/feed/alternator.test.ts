import { expect, it } from "vitest";
import {
  alternatorOutput_A,
  alternatorSpare_A,
  ampacity_A,
  areaForAmps_mm2,
} from "../../../../packages/sim/src/feed/index.ts";

it("scales the curve with the rating and is nothing below its cut-in", () => {
  expect(alternatorOutput_A(100, 2500)).toBeCloseTo(82, 9);
  expect(alternatorOutput_A(100, 1900)).toBeCloseTo(57, 9); // half way from 32 to 82
  expect(alternatorOutput_A(100, 900)).toBe(0);
  expect(alternatorOutput_A(100, 9000)).toBe(96);
});

it("never has less than nothing to spare", () => {
  expect(alternatorSpare_A(60, 30, 700)).toBe(0);
  expect(() => alternatorOutput_A(Number.NaN, 2000)).toThrow("alternator rated_A must be 10 to 600");
});

it("gives a size between gauges no more than the thinner gauge", () => {
  const pair = { bundle: 2, engineSpace: false };
  expect(ampacity_A(16, pair)).toBe(120); // over 6 AWG (13.3 mm²), under 4 AWG (21.2 mm²)
  expect(ampacity_A(0.5, pair)).toBeNull();
  expect(ampacity_A(16, { bundle: 5, engineSpace: true })).toBeCloseTo(120 * 0.6 * 0.85, 9);
  expect(areaForAmps_mm2(61, pair)).toBeCloseTo(8.366, 3);
  expect(areaForAmps_mm2(446, pair)).toBeNull();
});
