import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandOf } from "../../../../packages/sim/src/answers/band.ts";
import { nearestRank } from "../../../../packages/sim/src/answers/quantile.ts";

/** A bank of which shares are counted in Ah. */
const whole = { full_Ah: 1, capacity_Ah: 1 };
const hours = 7;
const charge = fc.integer({ min: 0, max: 1_000_000 }).map((millionths) => millionths / 1e6);
const sky = fc.array(charge, { minLength: hours, maxLength: hours }).map((values) => Float64Array.from(values));
const rounded = (value: number) => Math.round(value * 1000) / 1000;

describe("the band of charge", () => {
  it("is the nearest rank of each hour's sorted charges, rounded", () => {
    fc.assert(
      fc.property(fc.array(sky, { minLength: 1, maxLength: 40 }), (skies) => {
        const band = bandOf(whole, skies[0]!, skies[0]!, skies);
        for (let hour = 0; hour < hours; hour++) {
          const sorted = Float64Array.from(skies, (one) => one[hour]!).sort();
          expect(band.p10[hour]).toBe(rounded(nearestRank(sorted, 0.1)));
          expect(band.p50[hour]).toBe(rounded(nearestRank(sorted, 0.5)));
          expect(band.p90[hour]).toBe(rounded(nearestRank(sorted, 0.9)));
        }
      }),
    );
  });
  it("is the average sky while none is drawn", () => {
    const average = Float64Array.of(1, 0.98765, 0);
    const { p10, p50, p90, ...fixed } = bandOf(whole, average, Float64Array.of(1, 0.5, 0), []);
    expect(p50).toEqual([1, 0.988, 0]);
    expect([p10, p90, fixed.average]).toEqual([p50, p50, p50]);
    expect(fixed.dark).toEqual([1, 0.5, 0]);
  });
});
