import fc from "fast-check";
import { expect, it } from "vitest";
import { DAYS_BEFORE } from "../../packages/sim/src/numeric/calendar.ts";
import { bendtOf, bendtQuantile, clampMean, leastClearness, mostClearness } from "../../packages/sim/src/sun/bendt.ts";
import { drawClearness, meanClearnessByDay, monthlyClearness } from "../../packages/sim/src/sun/index.ts";
import type { Climate } from "../../packages/sim/src/study.ts";

const hundredths = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => n / 100);
const mean = hundredths(6, 83);
const means = fc.array(mean, { minLength: 2, maxLength: 90 }).map((k) => Float64Array.from(k));
const dayToDay = hundredths(0, 90);
const seed = fc.integer();
const draw = fc.integer({ min: 0, max: 10_000 });
const climate = (latitude_deg: number, ghi_kWh_m2_day: number[]): Climate => ({
  latitude_deg,
  longitude_deg: null,
  utcOffset_h: null,
  ghi_kWh_m2_day,
  tmax_C: new Array<number>(12).fill(20),
  tmin_C: new Array<number>(12).fill(10),
  dayToDay: 0.29,
});

it("the same seed and draw give the same sky, whatever was drawn before", () => {
  fc.assert(
    fc.property(means, dayToDay, seed, draw, draw, (k, phi, s, d, other) => {
      const sky = drawClearness(k, phi, s, d);
      drawClearness(k, phi, s, other);
      expect(drawClearness(k, phi, s, d)).toEqual(sky);
    }),
  );
});

it("a long sky begins as a short one does", () => {
  fc.assert(
    fc.property(means, dayToDay, seed, draw, (k, phi, s, d) => {
      const half = k.subarray(0, Math.ceil(k.length / 2));
      expect(drawClearness(half, phi, s, d)).toEqual(drawClearness(k, phi, s, d).subarray(0, half.length));
    }),
  );
});

it("two draws differ, and two seeds differ", () => {
  fc.assert(
    fc.property(means, seed, seed, draw, draw, (k, s, t, d, e) => {
      fc.pre(s !== t && d !== e);
      expect(drawClearness(k, 0.29, s, d)).not.toEqual(drawClearness(k, 0.29, s, e));
      expect(drawClearness(k, 0.29, s, d)).not.toEqual(drawClearness(k, 0.29, t, d));
    }),
  );
});

it("no day is darker than the darkest or clearer than the clearest", () => {
  fc.assert(
    fc.property(means, dayToDay, seed, draw, (k, phi, s, d) => {
      drawClearness(k, phi, s, d).forEach((x, i) => {
        const kMean = k[i] ?? NaN;
        expect(x >= leastClearness(kMean) && x <= mostClearness(kMean)).toBe(true);
      });
    }),
  );
});

it("the distribution has the mean asked for, and its quantiles rise", () => {
  fc.assert(
    fc.property(mean, (k) => {
      const spread = bendtOf(clampMean(k));
      const steps = 20_000;
      let [sum, last, falls] = [0, -Infinity, 0];
      for (let i = 0; i < steps; i++) {
        const quantile = bendtQuantile(spread, (i + 0.5) / steps);
        if (quantile < last) falls++;
        last = quantile;
        sum += quantile / steps;
      }
      expect(falls).toBe(0);
      expect(Math.abs(sum - k)).toBeLessThan(1e-5); // the middle rule over 20 000 equal shares
    }),
    { numRuns: 30 },
  );
});

it("each month keeps its irradiation where no day had to be clamped", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -60, max: 60 }),
      fc.array(hundredths(30, 60), { minLength: 12, maxLength: 12 }),
      (latitude_deg, k) => {
        const bare = monthlyClearness(climate(latitude_deg, new Array<number>(12).fill(1))).h0_Wh_m2;
        const monthOf = (values: Float64Array, m: number) =>
          values.subarray(DAYS_BEFORE[m], DAYS_BEFORE[m + 1]).reduce((total, v) => total + v, 0);
        const length = (m: number) => (DAYS_BEFORE[m + 1] ?? NaN) - (DAYS_BEFORE[m] ?? NaN);
        const ghi = k.map((clearness, m) => (clearness * monthOf(bare, m)) / length(m) / 1000);
        const byDay = meanClearnessByDay(climate(latitude_deg, ghi), 1, 365);
        const clamped = byDay.some((x) => x <= 0.06 || x >= mostClearness(0.8) - 0.01);
        fc.pre(!clamped);
        const sun = byDay.map((x, i) => x * (bare[i] ?? NaN));
        ghi.forEach((mean_kWh, m) => expect(monthOf(sun, m) / length(m) / 1000).toBeCloseTo(mean_kWh, 9));
      },
    ),
  );
});

it("every day's mean allows a distribution, whatever the climate, polar months included", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -600, max: 720 }),
      fc.array(hundredths(0, 1200), { minLength: 12, maxLength: 12 }),
      (tenth, ghi) => {
        for (const k of meanClearnessByDay(climate(tenth / 10, ghi), 1, 365)) {
          expect(leastClearness(k) + 0.0099 < k && k < mostClearness(k) - 0.0099).toBe(true);
        }
      },
    ),
  );
});
