import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  absorptionFridge,
  calibrateFridge,
  compressorFridge,
  foodHours,
  inverterCoefficients,
  inverterRunningLoss_W,
  runShare,
} from "../../packages/sim/src/loads/index.ts";
import type { CompressorFridge, Use } from "../../packages/sim/src/study.ts";
import { familyFridge, inverter, lamp, steady, sum, threeWay } from "../fixtures/loads.ts";

const int = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
const tenths = (min: number, max: number): fc.Arbitrary<number> => int(10 * min, 10 * max).map((n) => n / 10);
const hundredths = (min: number, max: number): fc.Arbitrary<number> => int(100 * min, 100 * max).map((n) => n / 100);

const anyWindow: fc.Arbitrary<Use> = fc.record({
  from: hundredths(0, 23.99),
  to: hundredths(0, 24),
  duty: hundredths(0, 1),
  everyDays: int(1, 5),
});
const anyMoment: fc.Arbitrary<Use> = fc.record({ at: hundredths(0, 24), minutes: int(0, 1440), everyDays: int(1, 5) });
const anyUses = fc.array(fc.oneof(anyWindow, anyMoment), { maxLength: 5 });
const anyBay = fc.array(tenths(-15, 58), { minLength: 24, maxLength: 120 }).map((list) => Float64Array.from(list));

/** Rated somewhere between a light load and a compressor that runs nearly throughout. */
const anyFridge: fc.Arbitrary<CompressorFridge> = fc
  .record({
    compressor_W: int(30, 120),
    ratedShare: hundredths(0.08, 0.95),
    ratedAt_C: int(16, 43),
    inside_C: int(0, 8),
    volume_L: int(15, 400),
    restock_kg_day: tenths(0, 6),
    freezerShare: fc.oneof(fc.constant(0), hundredths(0, 1)),
  })
  .map(({ ratedShare, ...rest }) => ({ ...familyFridge, ...rest, rated_Wh_day: 24 * rest.compressor_W * ratedShare }));

describe("hours of use", () => {
  it("keep each hour's share within 0 and 1, whatever overlaps", () => {
    fc.assert(
      fc.property(anyUses, int(1, 200), (use, hours) => {
        const share = runShare({ ...lamp, use }, steady(20, hours));
        expect(share).toHaveLength(hours);
        for (const s of share) expect(s >= 0 && s <= 1).toBe(true);
      }),
    );
  });
  it("add up to the window's length times its duty, on every whole day", () => {
    fc.assert(
      fc.property(anyWindow, (window) => {
        if (!("from" in window)) return;
        const daily = { ...window, everyDays: 1 };
        const length_h = (((daily.to - daily.from) % 24) + 24) % 24 || (daily.to === daily.from ? 0 : 24);
        const share = runShare({ ...lamp, use: [daily] }, steady(20, 240));
        expect(sum(share)).toBeCloseTo(10 * length_h * daily.duty, 8);
      }),
    );
  });
  it("every n-th day add up to one n-th, over a span of n days that cuts no window", () => {
    fc.assert(
      fc.property(hundredths(16, 23), hundredths(0, 1), int(1, 6), (from, duty, n) => {
        const use: Use[] = [{ from, to: from + 0.75, duty, everyDays: n }];
        expect(sum(runShare({ ...lamp, use }, steady(20, 24 * n * 3)))).toBeCloseTo(3 * 0.75 * duty, 8);
      }),
    );
  });
  it("do not change when a window is cut in two, or the list is turned round", () => {
    fc.assert(
      fc.property(
        hundredths(0, 12),
        hundredths(0, 12),
        hundredths(0, 1),
        int(1, 4),
        (from, length, part, everyDays) => {
          const to = from + length;
          const cut = from + part * length;
          const whole = runShare({ ...lamp, use: [{ from, to, duty: 0.7, everyDays }] }, steady(20, 150));
          const halves: Use[] = [
            { from, to: cut, duty: 0.7, everyDays },
            { from: cut, to, duty: 0.7, everyDays },
          ];
          for (const use of [halves, [...halves].reverse()]) {
            const share = runShare({ ...lamp, use }, steady(20, 150));
            for (let i = 0; i < 150; i++) expect(share[i]).toBeCloseTo(whole[i]!, 9);
          }
        },
      ),
    );
  });
});

describe("an inverter", () => {
  it("never makes energy, and loses more the more it carries", () => {
    fc.assert(
      fc.property(int(100, 5000), int(0, 40), int(50, 97), int(1, 100), (rated_W, idle_W, percent, loadPercent) => {
        const given = { ...inverter, rated_W, idle_W, peakEfficiency: percent / 100 };
        fc.pre(percent / 100 < rated_W / (rated_W + idle_W));
        const { a, b } = inverterCoefficients(given);
        expect(a).toBe(b);
        const load_W = (rated_W * loadPercent) / 100;
        const loss_W = inverterRunningLoss_W(given, load_W);
        expect(loss_W).toBeGreaterThanOrEqual(0);
        expect(inverterRunningLoss_W(given, 1.1 * load_W)).toBeGreaterThanOrEqual(loss_W);
        expect(load_W / (load_W + idle_W + loss_W)).toBeLessThanOrEqual(percent / 100 + 1e-12); // none better than its peak
      }),
    );
  });
});

describe("a compressor fridge", () => {
  it("gives back its rating at the rating ambient, whatever the fridge", () => {
    fc.assert(
      fc.property(anyFridge, (fridge) => {
        const { power_W, inside_C } = compressorFridge({ ...fridge, restock_kg_day: 0 }, steady(fridge.ratedAt_C, 30));
        expect(sum(power_W.slice(6)) / fridge.rated_Wh_day).toBeCloseTo(1, 9);
        expect(inside_C[29]).toBe(calibrateFridge(fridge).compartments[0]!.set_C);
      }),
    );
  });
  it("draws between its controls' watt and its compressor's watts, and is warm only after it was stretched", () => {
    fc.assert(
      fc.property(anyFridge, anyBay, (fridge, bay_C) => {
        const { power_W, run, inside_C, stretched } = compressorFridge(fridge, bay_C);
        const set_C = calibrateFridge(fridge).compartments[0]!.set_C;
        for (let i = 0; i < bay_C.length; i++) {
          expect(power_W[i]).toBeGreaterThanOrEqual(1);
          expect(power_W[i]).toBeLessThanOrEqual(fridge.compressor_W * (1 + 1e-12));
          expect(run[i]).toBeCloseTo(power_W[i]! / fridge.compressor_W, 12);
          if (stretched[i] === 1) expect(power_W[i]).toBeCloseTo(fridge.compressor_W, 9);
          if (inside_C[i]! > set_C + 1e-9) expect(stretched[i]).toBe(1);
          expect(inside_C[i]).toBeLessThanOrEqual(Math.max(set_C, Math.max(...bay_C) + 2) + 1e-9); // 2 K of doors
        }
      }),
    );
  });
  it("never uses less in a warmer bay", () => {
    fc.assert(
      fc.property(
        anyFridge,
        anyBay,
        fc.array(tenths(0, 8), { minLength: 120, maxLength: 120 }),
        (fridge, bay_C, more_K) => {
          const cool = sum(compressorFridge(fridge, bay_C).power_W);
          const warm = sum(
            compressorFridge(
              fridge,
              bay_C.map((t, i) => t + more_K[i]!),
            ).power_W,
          );
          expect(warm).toBeGreaterThanOrEqual(cool * (1 - 1e-9));
        },
      ),
    );
  });
  // Not so for one that warms in a hot hour and is then cooled by a cold one through its walls: hence the two cases.
  const worse = (fridge: CompressorFridge, factor: number): CompressorFridge => ({
    ...fridge,
    rated_Wh_day: Math.min(24 * fridge.compressor_W, 24 + factor * (fridge.rated_Wh_day - 24)),
  });
  const useOf = (fridge: CompressorFridge, bay_C: Float64Array): number => sum(compressorFridge(fridge, bay_C).power_W);
  it("that holds its temperature never uses less with poorer insulation, in a bay no colder than its cabinet", () => {
    fc.assert(
      fc.property(anyFridge, anyBay, hundredths(1, 2), (fridge, bay_C, factor) => {
        const ample = { ...fridge, compressor_W: 60 * fridge.compressor_W };
        const warm_C = bay_C.map((t) => Math.max(t, fridge.inside_C));
        const poor = worse(ample, factor);
        expect(calibrateFridge(poor).ua_W_K).toBeGreaterThanOrEqual(calibrateFridge(ample).ua_W_K * (1 - 1e-12));
        expect(Math.max(...compressorFridge(poor, warm_C).stretched)).toBe(0);
        expect(useOf(poor, warm_C)).toBeGreaterThanOrEqual(useOf(ample, warm_C) * (1 - 1e-9));
      }),
    );
  });
  it("never uses less, and is never colder, with poorer insulation in a steady bay, overwhelmed or not", () => {
    fc.assert(
      fc.property(anyFridge, tenths(8, 60), hundredths(1, 2), (fridge, warm_C, factor) => {
        const bay_C = steady(warm_C, 72);
        const [good, poor] = [fridge, worse(fridge, factor)];
        expect(useOf(poor, bay_C)).toBeGreaterThanOrEqual(useOf(good, bay_C) * (1 - 1e-9));
        const colder = compressorFridge(good, bay_C).inside_C;
        compressorFridge(poor, bay_C).inside_C.forEach((t, i) => expect(t).toBeGreaterThanOrEqual(colder[i]! - 1e-9));
      }),
    );
  });
});

describe("food after a cut-off", () => {
  it("passes 5 °C before 8 °C, sooner in a warmer bay, and counts no negative hours", () => {
    fc.assert(
      fc.property(
        anyFridge,
        anyBay,
        hundredths(0, 20),
        int(0, 4),
        int(0, 60),
        (fridge, bay_C, cutOff_h, start_C, later_h) => {
          const food = foodHours(fridge, bay_C, cutOff_h, start_C, cutOff_h + later_h);
          const warmer = foodHours(
            fridge,
            bay_C.map((t) => t + 3),
            cutOff_h,
            start_C,
            cutOff_h + later_h,
          );
          const [to5_h, to8_h] = [food.hoursFromCutOffTo5C ?? Infinity, food.hoursFromCutOffTo8C ?? Infinity];
          expect(to5_h).toBeGreaterThan(0);
          expect(to5_h).toBeLessThanOrEqual(to8_h);
          expect(warmer.hoursFromCutOffTo5C ?? Infinity).toBeLessThanOrEqual(to5_h + 1e-9);
          expect(warmer.hoursFromCutOffTo8C ?? Infinity).toBeLessThanOrEqual(to8_h + 1e-9);
          if (fridge.inside_C >= 5) expect(food.hoursAbove5C).toBeNull();
          else expect(food.hoursAbove5C).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});

describe("an absorption fridge", () => {
  const anyThreeWay = fc
    .record({
      burns: fc.constantFrom("gas" as const, "dc" as const, "ac" as const),
      gas_g_day: int(150, 500),
      element_dc_W: int(60, 300),
      element_ac_W: int(60, 300),
      volume_L: int(30, 250),
      thermostat: fc.record({ gas: fc.boolean(), dc: fc.boolean(), ac: fc.boolean() }),
    })
    .map((change) => ({ ...threeWay, ...change }));
  const anyDriving = fc.array(hundredths(0, 1), { minLength: 120, maxLength: 120 });
  it("keeps duties within 0 and 1, energy and gas from going negative, and the cabinet between −18 °C and the bay", () => {
    fc.assert(
      fc.property(anyThreeWay, anyBay, anyDriving, (fridge, bay_C, driving) => {
        const got = absorptionFridge(fridge, bay_C, Float64Array.from(driving.slice(0, bay_C.length)));
        const warmest_C = Math.max(5, ...bay_C);
        for (let i = 0; i < bay_C.length; i++) {
          for (const duty of [got.campedElement[i]!, got.drivingElement[i]!, got.elementAcShare[i]!])
            expect(duty >= 0 && duty <= 1).toBe(true);
          expect(got.gas_g[i]! >= 0 && got.controls_A[i]! >= 0).toBe(true);
          expect(got.inside_C[i]! >= -18 && got.inside_C[i]! <= warmest_C + 1e-9).toBe(true);
        }
      }),
    );
  });
  it("is never colder in a warmer bay when flat out", () => {
    fc.assert(
      fc.property(anyThreeWay, anyBay, tenths(0, 10), (fridge, bay_C, more_K) => {
        const flatOut = { ...fridge, thermostat: { gas: false, dc: false, ac: false } };
        const cool = absorptionFridge(flatOut, bay_C, null).inside_C;
        const warm = absorptionFridge(
          flatOut,
          bay_C.map((t) => t + more_K),
          null,
        ).inside_C;
        cool.forEach((t, i) => expect(warm[i]).toBeGreaterThanOrEqual(t - 1e-9));
      }),
    );
  });
});
