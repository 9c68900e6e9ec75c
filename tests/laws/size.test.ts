import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceGrid } from "../../packages/sim/src/answers/chanceGrid.ts";
import { size } from "../../packages/sim/src/answers/size.ts";
import type { SizeAnswer, SizeRequest } from "../../packages/sim/src/answers/sizeTypes.ts";
import type { SizePoint } from "../../packages/sim/src/answers/types.ts";
import { arrayRung, bankRung, bruteGrid, request, rungs, type BruteGrid } from "../fixtures/sizing.ts";
import { lithium, openCamp, setup, study, twoAgm } from "../fixtures/stays.ts";
import { anyStudy, int, scaled } from "./arbitraries/study.ts";

const skies = { seed: 3, draws: 16 };

/** Ladders that reach from too small to plenty for most studies, months one to three. */
const anyRequest: fc.Arbitrary<SizeRequest> = fc
  .record({
    nights: int(1, 6),
    chance: fc.oneof(scaled(0.05, 1, 20), fc.constantFrom(0.5, 0.9, 1)),
    first: int(1, 12),
    months: int(1, 3),
    bank: int(20, 200),
    array: int(0, 200),
    step: int(40, 250),
  })
  .map(({ nights, chance, first, months, bank, array, step }) =>
    request({
      nights,
      chance,
      months: rungs(first, 1, months).map((month) => ((month - 1) % 12) + 1),
      banks: (["agm", "lfp"] as const).flatMap((chemistry) =>
        rungs(bank, step, 4).map((Ah) => bankRung(chemistry, Ah)),
      ),
      arrays: rungs(array, step, 4).map(arrayRung),
    }),
  );

const key = ({ bank_Ah, array_W }: Pick<SizePoint, "bank_Ah" | "array_W">) => `${bank_Ah}/${array_W}`;
const corners = ({ staircases }: SizeAnswer) => staircases.map((each) => each.corners.map(key));

/** The pairs that reach the chance with no other that is smaller or equal in both reaching it. */
function minimal({ banks, arrays, chance }: BruteGrid, least: number): string[] {
  const does = (b: number, a: number) => chance[b]![a]! >= least - 1e-9;
  return banks.flatMap((bank, b) =>
    arrays.flatMap((array, a) => {
      const beaten = banks.some((_, i) => arrays.some((_, j) => i <= b && j <= a && (i < b || j < a) && does(i, j)));
      return does(b, a) && !beaten ? [key({ bank_Ah: bank.capacity_Ah, array_W: array.watts })] : [];
    }),
  );
}

/** The full grid takes its time; it is what the walk is held against. */
describe("size", { timeout: 60_000 }, () => {
  it("finds exactly the smallest pairs of the full grid, and the grid its every chance", () => {
    fc.assert(
      fc.property(anyStudy, anyRequest, (any, asked) => {
        const fitted = any.setups[0]!;
        const grid = bruteGrid(any, fitted, asked, skies);
        const answer = size(any, fitted, asked, skies);
        expect(corners(answer)).toEqual(grid.map((each) => minimal(each, asked.chance)));
        expect(chanceGrid(any, fitted, asked, skies).map(({ chance }) => chance)).toEqual(
          grid.map(({ chance }) => chance),
        );
        expect(answer.bankRuns).toBeLessThanOrEqual(answer.gridRuns);
      }),
      { numRuns: 40 },
    );
  });

  const tighter = (asked: SizeRequest, nights: number, chance: number): SizeRequest => ({
    ...asked,
    nights: asked.nights + nights,
    chance: Math.min(1, asked.chance + chance),
  });
  const smaller = (a: string, b: string) => {
    const [aAh = 0, aW = 0] = a.split("/").map(Number);
    const [bAh = 0, bW = 0] = b.split("/").map(Number);
    return aAh <= bAh && aW <= bW;
  };

  it("never shrinks as more nights, a higher chance or more months are asked: each corner stands on an old one", () => {
    fc.assert(
      fc.property(
        anyStudy,
        anyRequest,
        int(0, 3),
        scaled(0, 0.5, 20),
        int(1, 12),
        (any, asked, nights, chance, month) => {
          const before = corners(size(any, any.setups[0]!, asked, skies));
          const more = { ...tighter(asked, nights, chance), months: [...new Set([...asked.months, month])] };
          const after = corners(size(any, any.setups[0]!, more, skies));
          after.forEach((list, i) => {
            for (const corner of list) expect(before[i]!.some((old) => smaller(old, corner))).toBe(true);
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  const anyLimits = fc.record({
    budget: fc.option(int(0, 40_000)),
    payload_kg: fc.option(int(0, 150)),
    removed_kg: int(0, 60),
    roof_W: fc.option(int(0, 900)),
  });
  /** Prices that need not rise with size, some not known. */
  const priced = (asked: SizeRequest, prices: readonly (number | null)[]): SizeRequest => ({
    ...asked,
    banks: asked.banks.map((bank, i) => ({ ...bank, price: prices[i % prices.length]! })),
  });
  const anyPrices = fc.array(fc.option(int(500, 20_000)), { minLength: 1, maxLength: 8 });

  it("picks the cheapest of all pairs of the grid that do it within roof, budget and payload", () => {
    fc.assert(
      fc.property(anyStudy, anyRequest, anyLimits, anyPrices, (any, plain, limits, prices) => {
        const asked = priced({ ...plain, ...limits }, prices);
        const { pick, nearest, inTheWay, reason } = size(any, any.setups[0]!, asked, skies);
        const fitting = bruteGrid(any, any.setups[0]!, asked, skies).flatMap(({ banks, arrays, chance }) =>
          banks.flatMap((bank, b) =>
            arrays.flatMap((array, a) => {
              const price = bank.price === null ? null : bank.price + array.price!;
              const fits =
                (asked.budget === null || (price !== null && price <= asked.budget)) &&
                (asked.payload_kg === null || bank.mass_kg! + array.mass_kg! - asked.removed_kg <= asked.payload_kg);
              return fits ? [{ price, chance: chance[b]![a]! }] : [];
            }),
          ),
        );
        const does = fitting.filter(({ chance }) => chance >= asked.chance - 1e-9);
        expect(pick === null).toBe(does.length === 0);
        expect(nearest === null).toBe(pick !== null || fitting.length === 0);
        expect(inTheWay.length > 0).toBe(pick === null);
        expect(reason).not.toMatch(/NaN|undefined|null|Infinity/);
        const known = does.flatMap(({ price }) => (price === null ? [] : [price]));
        if (pick !== null) expect(pick.price).toBe(known.length > 0 ? Math.min(...known) : null);
        if (nearest !== null) expect(nearest.chance).toBe(Math.max(...fitting.map(({ chance }) => chance)));
      }),
      { numRuns: 40 },
    );
  });

  it("is never worse off with more money, more payload or more roof", () => {
    const more = (limit: number | null, by: number) => (limit === null ? null : limit + by);
    fc.assert(
      fc.property(
        anyStudy,
        anyRequest,
        anyLimits,
        int(0, 30_000),
        int(0, 80),
        int(0, 400),
        (any, plain, limits, a, b, c) => {
          const asked = { ...plain, ...limits };
          const before = size(any, any.setups[0]!, asked, skies).pick;
          const { budget, payload_kg, roof_W } = limits;
          const wider = { ...asked, budget: more(budget, a), payload_kg: more(payload_kg, b), roof_W: more(roof_W, c) };
          const after = size(any, any.setups[0]!, wider, skies).pick;
          if (before !== null) expect(after!.price!).toBeLessThanOrEqual(before.price!);
          if (after !== null && roof_W !== null) expect(after.array_W).toBeLessThanOrEqual(roof_W + c);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("needs a fifth of the grid's bank runs or fewer on a ladder of twelve by twelve, and does not miss a corner there", () => {
    const asked = request({
      nights: 14,
      banks: [
        ...rungs(50, 50, 12).map((Ah) => bankRung("agm", Ah)),
        ...rungs(50, 50, 12).map((Ah) => bankRung("lfp", Ah)),
      ],
      arrays: rungs(100, 80, 12).map(arrayRung),
    });
    const few = { seed: 1, draws: 20 };
    for (const fitted of [setup(twoAgm, 300), setup(lithium, 400)]) {
      const any = study([fitted], openCamp);
      const answer = size(any, fitted, asked, few);
      expect(answer.gridRuns).toBe(2 * 144 * 3 * 20);
      expect(answer.bankRuns * 5).toBeLessThan(answer.gridRuns);
      expect(corners(answer)).toEqual(bruteGrid(any, fitted, asked, few).map((each) => minimal(each, asked.chance)));
      expect(corners(answer).every((list) => list.length >= 3)).toBe(true);
    }
  });
});
