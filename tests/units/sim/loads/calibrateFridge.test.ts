import { describe, expect, it } from "vitest";
import { calibrateFridge, compressorFridge } from "../../../../packages/sim/src/loads/index.ts";
import { familyFridge, steady } from "../../../fixtures/loads.ts";

describe("one rating", () => {
  it("gives an insulation of about 2 W/K for a family fridge", () => {
    const { ua_W_K, capacity_Wh_K, compartments } = calibrateFridge(familyFridge);
    expect(ua_W_K).toBeCloseTo(((29 / 23) * 0.3 * 263.15) / 47, 9); // (30 − 1) W × COP over 21 + 2 K
    expect(capacity_Wh_K).toBeCloseTo((1.88 * 20 * 3.7) / 3.6, 9); // 20 kg for each 100 L
    expect(compartments).toHaveLength(1);
  });
  it("splits between fresh and freezer, which stand at their own temperatures", () => {
    const { ua_W_K, compartments } = calibrateFridge({ ...familyFridge, freezerShare: 0.25 });
    expect(compartments.map(({ set_C }) => set_C)).toEqual([4, -18]);
    expect(compartments.map((c) => c.ua_W_K / ua_W_K)).toEqual([0.75, 0.25]);
  });
  it("a freezer part makes winter dearer and heat cheaper than one compartment at 4 °C", () => {
    const use = (freezerShare: number, bay_C: number): number =>
      compressorFridge({ ...familyFridge, freezerShare }, steady(bay_C, 24)).power_W[23]!;
    expect(use(0.3, 10)).toBeGreaterThan(1.3 * use(0, 10));
    expect(use(0.3, 38)).toBeLessThan(0.95 * use(0, 38));
  });
});

describe("a rating that cannot be", () => {
  it.each([
    [{ rated_Wh_day: 24 }, "fridge: rated_Wh_day must be more than 24, got 24"],
    [{ rated_Wh_day: 1801 }, "fridge: rated_Wh_day must be at most 24 h of compressor_W, 1800, got 1801"],
    [{ ratedAt_C: 1 }, "fridge: ratedAt_C must be warmer than the cabinet, got 1"],
    [{ volume_L: 0 }, "fridge: volume_L must be 1 to 5000, got 0"],
    [{ freezerShare: 1.1 }, "fridge: freezerShare must be 0 to 1, got 1.1"],
    [{ restock_kg_day: -1 }, "fridge: restock_kg_day must be 0 to 1000, got -1"],
    [{ compressor_W: NaN }, "fridge: compressor_W must be more than 1, got NaN"],
    [{ inside_C: NaN }, "fridge: inside_C must be -40 to 20, got NaN"],
  ])("%o", (change, message) =>
    expect(() => calibrateFridge({ ...familyFridge, ...change })).toThrow(new RangeError(message)),
  );
});
