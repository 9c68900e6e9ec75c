import { describe, expect, it } from "vitest";
import { hourlyAir_C, meanAir_C } from "../../../../packages/sim/src/air/index.ts";
import type { Climate } from "../../../../packages/sim/src/study.ts";

const months = (of: (m: number) => number): number[] => Array.from({ length: 12 }, (_, m) => of(m));
const even: Climate = {
  latitude_deg: 40,
  longitude_deg: null,
  utcOffset_h: null,
  ghi_kWh_m2_day: months(() => 4),
  tmax_C: months(() => 30),
  tmin_C: months(() => 10),
  dayToDay: 0.29,
};

describe("a day between 10 and 30 °C", () => {
  const day = hourlyAir_C(even, 100, 1);
  it("reaches both, to what falls between middles of hours", () => {
    expect(Math.min(...day)).toBeCloseTo(10, 0);
    expect(Math.max(...day)).toBeCloseTo(30, 0);
    expect(Math.min(...day)).toBeGreaterThanOrEqual(10 - 1e-5);
    expect(Math.max(...day)).toBeLessThanOrEqual(30 + 1e-5);
  });
  it("is coolest about sunrise and warmest in mid-afternoon", () => {
    expect(day.indexOf(Math.min(...day))).toBe(5);
    expect(day.indexOf(Math.max(...day))).toBe(15); // the published shape peaks at 15:10
  });
  it("lies by the published shape for design days, on the mean within 3 % of the range", () => {
    // ASHRAE Fundamentals 2021, ch. 14, table 6: the mean lies 0.46375 of the range above the minimum
    const mean = day.reduce((sum, t) => sum + t, 0) / 24;
    expect(Math.abs((mean - 10) / 20 - 0.46375)).toBeLessThan(0.03);
  });
});

it("follows the sun, not the clock: an hour's lead moves the day by an hour", () => {
  const at = (utcOffset_h: number) => hourlyAir_C({ ...even, longitude_deg: 0, utcOffset_h }, 100, 1);
  const [home, ahead] = [at(0), at(1)];
  for (let h = 0; h < 23; h++) expect(ahead[h + 1]).toBeCloseTo(home[h] ?? NaN, 9);
});

it("joins mid-months in straight lines, December to January too", () => {
  const rising = { ...even, tmax_C: months((m) => m), tmin_C: months((m) => m) };
  const noon = (n: number): number => hourlyAir_C(rising, n, 1)[12] ?? NaN;
  expect(noon(16)).toBeCloseTo(0, 9); // the middle of January
  expect(noon(105)).toBeCloseTo(3 - 0.5 / 30.5, 9); // half a day before the middle of April
  expect(noon(365)).toBeCloseTo(11 - (11 * (365 - 350)) / 31, 9);
  expect(noon(1)).toBeCloseTo(11 - (11 * 16) / 31, 9);
});

describe("the mean of a month", () => {
  it("is that of its hours", () => {
    const hours = hourlyAir_C(even, 182, 31);
    expect(meanAir_C(even, 7)).toBeCloseTo(hours.reduce((sum, t) => sum + t, 0) / hours.length, 12);
  });
  it("lies a little under the middle of the extremes", () => {
    expect(meanAir_C(even, 1)).toBeGreaterThan(19);
    expect(meanAir_C(even, 1)).toBeLessThan(20);
  });
});

describe("what is refused", () => {
  it.each([
    [() => hourlyAir_C(even, 366, 1), /firstDayOfYear/],
    [() => hourlyAir_C({ ...even, tmin_C: [1, 2] }, 1, 1), /tmin_C must hold 12 values, got 2/],
    [
      () => hourlyAir_C({ ...even, tmax_C: months(() => 5) }, 1, 1),
      /tmax_C\[0\] must be at least tmin_C\[0\], got 5 and 10/,
    ],
    [() => hourlyAir_C({ ...even, tmax_C: months(() => NaN) }, 1, 1), /tmax_C\[0\] must be -90 to 70, got NaN/],
    [() => meanAir_C(even, 13), /month must be a whole number from 1 to 12, got 13/],
  ])("%#", (ask, message) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  });
});
