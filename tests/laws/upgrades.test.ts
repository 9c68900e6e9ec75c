import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compare } from "../../packages/sim/src/answers/compare.ts";
import { changesBetween, sharesOf, upgrades } from "../../packages/sim/src/answers/upgrades.ts";
import type { Setup } from "../../packages/sim/src/study.ts";
import { anySetup, anyStudy, int } from "./arbitraries/study.ts";

const skies = { seed: 5, draws: 10 };

/** A measure of every subset of so many changes. */
const anyMeasure = int(1, 6).chain((changes) =>
  fc.tuple(fc.constant(changes), fc.array(int(0, 600), { minLength: 2 ** changes, maxLength: 2 ** changes })),
);
const swap = (subset: number, i: number, j: number): number => {
  const [a, b] = [(subset >> i) & 1, (subset >> j) & 1];
  return a === b ? subset : subset ^ (1 << i) ^ (1 << j);
};
const sum = (list: readonly number[]) => list.reduce((total, x) => total + x, 0);

describe("shares of a gain", () => {
  it("sum to the whole gain", () => {
    fc.assert(
      fc.property(anyMeasure, ([changes, measure]) => {
        const { before, after, shares } = sharesOf(changes, measure);
        expect(Math.abs(sum(shares) - (after - before))).toBeLessThan(1e-9);
      }),
    );
  });

  it("are equal for two changes that do the same, whatever else is made", () => {
    fc.assert(
      fc.property(anyMeasure, int(0, 5), int(0, 5), ([changes, measure], i, j) => {
        const [a, b] = [i % changes, j % changes];
        const symmetric = measure.map((x, subset) => (x + measure[swap(subset, a, b)]!) / 2);
        const { shares } = sharesOf(changes, symmetric);
        expect(Math.abs(shares[a]! - shares[b]!)).toBeLessThan(1e-9);
      }),
    );
  });

  it("are nothing for a change that changes nothing", () => {
    fc.assert(
      fc.property(anyMeasure, int(0, 5), ([changes, measure], i) => {
        const idle = 1 << (i % changes);
        const { shares } = sharesOf(
          changes,
          measure.map((_, subset) => measure[subset & ~idle]!),
        );
        expect(shares[i % changes]).toBe(0);
      }),
    );
  });

  it("are the mean worth over every order of making the changes", () => {
    // Two changes by hand: worth alone 1 and 3, together 10: the six over are halved.
    expect(sharesOf(2, [0, 1, 3, 10]).shares).toEqual([4, 6]);
  });
});

describe("upgrades", { timeout: 60_000 }, () => {
  it("matches direct runs of each change alone, of none and of all; shares sum to the gain", () => {
    fc.assert(
      fc.property(anyStudy, anySetup, (study, other) => {
        const [from, to] = [study.setups[0]!, { ...other, id: "to" }];
        const changes = changesBetween(from, to);
        const direct: Setup[] = [from, ...changes.map(({ make }) => make(from)), { ...to, id: from.id }];
        const runs = compare({ ...study, setups: direct }, { skies }).setups;
        const p50 = runs.map(({ days }) => days.drawn.p50 ?? 60);
        const { days, dullDays, chance } = upgrades(study, from, to, skies);
        expect(close([days.before, ...days.alone, days.after], p50)).toBe(true);
        const p10 = runs.map(({ days }) => days.drawn.p10 ?? 60);
        expect(close([dullDays.before, ...dullDays.alone, dullDays.after], p10)).toBe(true);
        expect([chance.before, ...chance.alone, chance.after]).toEqual(runs.map((run) => run.chanceOfLasting));
        for (const { shares, before, after } of [days, dullDays, chance]) {
          expect(Math.abs(sum(shares) - (after - before))).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 20 },
    );
  });
});

const close = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((x, i) => Math.abs(x - b[i]!) < 1e-9);
