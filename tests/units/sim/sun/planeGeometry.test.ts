import { describe, expect, it } from "vitest";
import { irradiate, planeGeometry } from "../../../../packages/sim/src/sun/index.ts";

const bare = { latitude_deg: 43, longitude_deg: null, utcOffset_h: null };

describe("the clock", () => {
  it("puts noon in the middle of the solar day where longitude is unknown", () => {
    const { share_total } = planeGeometry(bare, 100, 1, 0, 0);
    expect(share_total[11]).toBeCloseTo(share_total[12] ?? NaN, 12);
  });
  it("puts it where longitude, offset and the equation of time say", () => {
    // 9° west of the zone's meridian: 36 minutes late, so the hour from 12:36 is centred on 13:06
    const { share_total } = planeGeometry({ latitude_deg: 43, longitude_deg: -84, utcOffset_h: -5 }, 100, 1, 0, 0);
    expect(share_total.indexOf(Math.max(...share_total))).toBe(12);
    expect(share_total[13]).toBeGreaterThan(share_total[11] ?? NaN);
  });
  it("refuses a longitude without an offset", () => {
    expect(() => planeGeometry({ ...bare, longitude_deg: 5 }, 1, 1, 0, 0)).toThrow(/longitude_deg and utcOffset_h/);
  });
});

describe("a run of days", () => {
  it("runs on past 31 December", () => {
    const across = planeGeometry(bare, 365, 2, 30, 180);
    const next = planeGeometry(bare, 1, 1, 30, 180);
    expect(across.r_b.subarray(24)).toEqual(next.r_b);
    expect(across.h0_Wh_m2[1]).toBe(next.h0_Wh_m2[0]);
  });
  it("may be empty", () => expect(planeGeometry(bare, 1, 0, 0, 0).share_total).toHaveLength(0));
});

it("joins the two lit ends of an hour that holds solar midnight", () => {
  // just under the circle, midsummer: the sun is down for less than an hour about solar midnight, which this clock has at 0:30
  const place = { latitude_deg: 66.45, longitude_deg: 0, utcOffset_h: 0.5 };
  const { i0_Wh_m2, sunset_rad, h0_Wh_m2 } = planeGeometry(place, 172, 1, 0, 0);
  const night_h = 24 - (24 / Math.PI) * (sunset_rad[0] ?? NaN);
  expect(night_h > 0 && night_h < 1).toBe(true);
  expect(i0_Wh_m2[0]).toBeGreaterThan(0);
  expect(i0_Wh_m2.reduce((sum, i0) => sum + i0, 0)).toBeCloseTo(h0_Wh_m2[0] ?? NaN, 8);
});

it("looks from behind on a wall that faces away from the sun", () => {
  const { r_b } = planeGeometry(bare, 355, 1, 90, 0);
  expect(Math.max(...r_b)).toBe(0);
});

describe("what is refused", () => {
  it.each([
    [() => planeGeometry(bare, 0, 1, 0, 0), /firstDayOfYear must be a whole number from 1 to 365, got 0/],
    [() => planeGeometry(bare, 1, 1.5, 0, 0), /days must be a whole number/],
    [() => planeGeometry(bare, 1, 1, 91, 0), /tilt_deg must be 0 to 90, got 91/],
    [() => planeGeometry(bare, 1, 1, 0, NaN), /azimuth_deg must be -360 to 360, got NaN/],
    [() => planeGeometry({ ...bare, latitude_deg: 91 }, 1, 1, 0, 0), /latitude_deg must be -90 to 90, got 91/],
    [
      () => irradiate(planeGeometry(bare, 1, 2, 0, 0), new Float64Array(1), new Float64Array(48)),
      /clearness must hold 2/,
    ],
    [() => irradiate(planeGeometry(bare, 1, 1, 0, 0), new Float64Array(1), new Float64Array(23)), /out must hold 24/],
    [() => irradiate(planeGeometry(bare, 1, 1, 0, 0), Float64Array.of(NaN), new Float64Array(24)), /clearness\[0\]/],
  ])("%#", (ask, message) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  });
});
