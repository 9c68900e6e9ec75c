import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compare, pairedGain } from "../../packages/sim/src/answers/compare.ts";
import { explain } from "../../packages/sim/src/answers/explain.ts";
import type { Setup } from "../../packages/sim/src/study.ts";
import { anySetup, anyStudy, int } from "./arbitraries/study.ts";

const options = { skies: { seed: 5, draws: 12 }, horizon_days: 16 };

/** Only the bank, or only the panels and a charger that does not hold them back, grow. */
const grown = (setup: Setup, moreAh: number, more_W: number): Setup => ({
  ...setup,
  bank: { ...setup.bank, capacity_Ah: setup.bank.capacity_Ah + moreAh },
  arrays: setup.arrays.map((array) => ({ ...array, watts: array.watts + more_W })),
});
const unhindered = (setup: Setup): Setup => ({
  ...setup,
  bank: { ...setup.bank, reserve: null },
  solarCharger: setup.solarCharger && { ...setup.solarCharger, rated_A: 1000 },
});

describe("compare", { timeout: 60_000 }, () => {
  it("finds no sky under which more bank or more panel lasts less long", () => {
    fc.assert(
      fc.property(anyStudy, int(0, 200), int(0, 400), (study, moreAh, more_W) => {
        const first = unhindered(study.setups[0]!);
        const setups = [first, grown(first, moreAh, 0), grown(first, 0, more_W), grown(first, moreAh, more_W)];
        const answer = compare({ ...study, setups }, options);
        for (const { gain } of answer.setups.slice(1)) expect(gain!.least_days).toBeGreaterThanOrEqual(-1e-9);
        const chances = answer.setups.map(({ chanceOfLasting }) => chanceOfLasting);
        expect(Math.min(...chances)).toBe(chances[0]);
      }),
      { numRuns: 60 },
    );
  });

  it("gives the negative where the two are swapped, and nothing against itself", () => {
    fc.assert(
      fc.property(anyStudy, anySetup, (study, other) => {
        const first = study.setups[0]!;
        const gainOf = (a: Setup, b: Setup) => compare({ ...study, setups: [a, b] }, options).setups[1]!.gain!;
        const [there, back] = [gainOf(first, other), gainOf(other, first)];
        expect(there.mean_days).toBeCloseTo(-back.mean_days, 9);
        const same = gainOf(first, first);
        expect([same.p10_days, same.p50_days, same.p90_days, same.least_days]).toEqual([0, 0, 0, 0]);
      }),
      { numRuns: 40 },
    );
  });

  it("says the same of each setup as it would be told of it alone", () => {
    fc.assert(
      fc.property(anyStudy, anySetup, (study, other) => {
        const setups = [study.setups[0]!, { ...other, id: "other" }];
        const alone = setups.map((setup) => explain({ ...study, setups: [setup] }, options).setups[0]!);
        compare({ ...study, setups }, options).setups.forEach((got, i) => {
          const { days, reserveDays, chanceOfLasting, sun_Wh_day } = alone[i]!;
          expect({ ...got }).toMatchObject({ days, reserveDays, chanceOfLasting, sun_Wh_day });
        });
      }),
      { numRuns: 30 },
    );
  });

  it("pairs sky by sky: quantiles in order, the least the smallest, runs past the horizon as the horizon", () => {
    const hours = fc.array(fc.oneof(int(0, 240), fc.constant(NaN)), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(hours, int(0, 1000), (list, seed) => {
        const against = list.map((_, i) => (seed * (i + 7)) % 240);
        const gain = pairedGain(Float64Array.from(list), Float64Array.from(against), 240);
        const each = list.map((h, i) => ((Number.isNaN(h) ? 240 : h) - against[i]!) / 24);
        expect(gain.least_days).toBeCloseTo(Math.min(...each), 12);
        expect(gain.mean_days).toBeCloseTo(each.reduce((sum, x) => sum + x, 0) / each.length, 9);
        expect(gain.least_days).toBeLessThanOrEqual(gain.p10_days);
        expect(gain.p10_days).toBeLessThanOrEqual(gain.p50_days);
        expect(gain.p50_days).toBeLessThanOrEqual(gain.p90_days);
        expect(gain.atLeast).toBe(list.some(Number.isNaN));
      }),
    );
  });
});
