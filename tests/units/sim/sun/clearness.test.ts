import { describe, expect, it } from "vitest";
import { bendtBetween, bendtQuantile, leastClearness } from "../../../../packages/sim/src/sun/bendt.ts";
import {
  dayOfYear,
  drawClearness,
  meanClearnessByDay,
  monthlyClearness,
} from "../../../../packages/sim/src/sun/index.ts";
import { gaussianDays } from "../../../../packages/sim/src/sun/gaussianDays.ts";
import type { Climate } from "../../../../packages/sim/src/study.ts";

const north: Climate = {
  latitude_deg: 70,
  longitude_deg: null,
  utcOffset_h: null,
  ghi_kWh_m2_day: [0, 0.4, 1.6, 3.6, 4.8, 5.2, 4.7, 3.2, 1.7, 0.6, 0.1, 0],
  tmax_C: new Array<number>(12).fill(5),
  tmin_C: new Array<number>(12).fill(-5),
  dayToDay: 0.29,
};

describe("polar months", () => {
  const { clearness, polar } = monthlyClearness(north);
  it("are those without sun", () => expect(polar.flatMap((dark, m) => (dark ? [m + 1] : []))).toEqual([1, 12]));
  it("take the mean of the lit ones", () => {
    const lit = clearness.slice(1, 11);
    for (const m of [0, 11]) expect(clearness[m]).toBeCloseTo(lit.reduce((sum, k) => sum + k, 0) / 10, 12);
  });
});

describe("the darkest day", () => {
  it.each([
    [0.2, 0.05],
    [0.35, 0.05],
    [0.4, 0.075],
    [0.45, 0.1],
    [0.7, 0.1],
  ])("of a mean of %f is %f", (mean, least) => expect(leastClearness(mean)).toBeCloseTo(least, 12));
});

it("spreads days evenly where the mean lies in the middle", () => {
  const even = bendtBetween(0.1, 0.7, 0.4);
  expect(even.gamma).toBeCloseTo(0, 12);
  expect(bendtQuantile(even, 0.25)).toBeCloseTo(0.25, 12);
});
it("stays within its ends for means against them", () => {
  for (const mean of [0.0501, 0.7499]) {
    const tight = bendtBetween(0.05, 0.75, mean);
    for (const share of [0, 1e-10, 0.5, 1 - 1e-10, 1]) {
      const k = bendtQuantile(tight, share);
      expect(k >= 0.05 - 1e-12 && k <= 0.75 + 1e-12).toBe(true);
    }
  }
});
it("refuses a mean outside its ends", () => expect(() => bendtBetween(0.05, 0.7, 0.7)).toThrow(/between 0.05 and 0.7/));

describe("the stream of a draw", () => {
  it("is a standard normal, whichever the draw", () => {
    const firsts = Array.from({ length: 20_000 }, (_, draw) => gaussianDays(1, 0.29, 7, draw)[0] ?? NaN);
    const mean = firsts.reduce((sum, x) => sum + x, 0) / firsts.length;
    const variance = firsts.reduce((sum, x) => sum + (x - mean) ** 2, 0) / firsts.length;
    expect(Math.abs(mean)).toBeLessThan(0.03); // four standard errors, 1/√20 000 each
    expect(Math.abs(variance - 1)).toBeLessThan(0.04);
  });
  it("says nothing of the next draw's, nor the next seed's", () => {
    const across = (of: (i: number) => number) => {
      const values = Array.from({ length: 20_000 }, (_, i) => of(i));
      return values.slice(1).reduce((sum, x, i) => sum + x * (values[i] ?? NaN), 0) / values.length;
    };
    expect(Math.abs(across((i) => gaussianDays(1, 0, 7, i)[0] ?? NaN))).toBeLessThan(0.03);
    expect(Math.abs(across((i) => gaussianDays(1, 0, i, 0)[0] ?? NaN))).toBeLessThan(0.03);
  });
});

describe("day of the year", () => {
  it.each([
    [1, 1, 1],
    [2, 28, 59],
    [2, 29, 59],
    [3, 1, 60],
    [12, 31, 365],
  ])("of month %i, day %i is %i", (month, day, n) => expect(dayOfYear(month, day)).toBe(n));
  it("refuses a day the month has not", () => expect(() => dayOfYear(4, 31)).toThrow(/day must be .* 1 to 30, got 31/));
});

describe("what is refused", () => {
  const k = Float64Array.of(0.5);
  it.each([
    [() => drawClearness(k, 1, 1, 0), /dayToDay must be 0 to 0.99, got 1/],
    [() => drawClearness(k, 0.3, 0.5, 0), /seed must be a whole number/],
    [() => drawClearness(k, 0.3, 1, -1), /draw must be a whole number/],
    [() => drawClearness(Float64Array.of(0.9), 0.3, 1, 0), /meanK must be .* got 0.9/],
    [() => meanClearnessByDay({ ...north, ghi_kWh_m2_day: [1] }, 1, 1), /ghi_kWh_m2_day must hold 12 values, got 1/],
    [
      () => meanClearnessByDay({ ...north, ghi_kWh_m2_day: new Array<number>(12).fill(NaN) }, 1, 1),
      /ghi_kWh_m2_day\[0\] must be 0 to 15, got NaN/,
    ],
  ])("%#", (ask, message) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  });
});
