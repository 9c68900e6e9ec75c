import { describe, expect, it } from "vitest";
import { compressorFridge } from "../../../../packages/sim/src/loads/index.ts";
import { familyFridge, portable, steady } from "../../../fixtures/loads.ts";

describe("a fridge that holds", () => {
  it("draws its rating at the rating ambient with nothing restocked", () => {
    const { power_W, run, stretched } = compressorFridge({ ...familyFridge, restock_kg_day: 0 }, steady(25, 48));
    expect(power_W[47]).toBeCloseTo(30, 9);
    expect(run[47]).toBeCloseTo(30 / 75, 9);
    expect(Math.max(...stretched)).toBe(0);
  });
  it("chills what is restocked: 2 kg a day from 25 to 4 °C is 43 Wh of heat", () => {
    const bare = compressorFridge({ ...familyFridge, restock_kg_day: 0 }, steady(25, 24)).power_W[23]!;
    const stocked = compressorFridge(familyFridge, steady(25, 24)).power_W[23]!;
    const cop = (0.3 * 263.15) / 47;
    expect(24 * (stocked - bare)).toBeCloseTo((2 * 3.7 * 21) / 3.6 / cop, 6);
  });
  it("doors cost a family fridge the heat of 10 to 40 changes of its air a day", () => {
    // Published psychrometrics: 2.0 Wh for each 100 L of air at 32 °C, 60 %; the doors are 2 K of UA.
    const doors_Wh_day = 24 * 2 * 2.118;
    expect(doors_Wh_day / (2.0 * 1.88)).toBeGreaterThan(10);
    expect(doors_Wh_day / (2.0 * 1.88)).toBeLessThan(40);
  });
});

describe("a fridge that cannot", () => {
  const heatWave = Float64Array.from({ length: 96 }, (_, i) => (i >= 24 && i < 36 ? 55 : 25));
  const { power_W, inside_C, stretched } = compressorFridge(familyFridge, heatWave);
  it("runs throughout and warms, in the hours that are marked", () => {
    expect([stretched[23], stretched[24], stretched[35]]).toEqual([0, 1, 1]);
    expect(power_W[30]).toBeCloseTo(75, 9);
    expect(inside_C[35]).toBeGreaterThan(inside_C[25]!);
    expect(inside_C[35]).toBeGreaterThan(5);
  });
  it("catches up afterwards, still at full run, and then holds again", () => {
    expect([stretched[36], power_W[36]]).toEqual([1, 75]);
    expect(inside_C[95]).toBe(4);
    expect(power_W[95]).toBeCloseTo(power_W[23]!, 9);
  });
});

describe("a bay colder than the cabinet", () => {
  it("leaves the controls' watt, and the cabinet cools towards the bay", () => {
    const { power_W, inside_C } = compressorFridge(familyFridge, steady(-10, 400));
    expect(new Set(power_W)).toEqual(new Set([1]));
    expect(inside_C[399]).toBeCloseTo(-8, 6); // 2 K of doors above the bay
  });
  it("keeps a freezer compartment running", () =>
    expect(compressorFridge({ ...familyFridge, freezerShare: 0.3 }, steady(0, 48)).power_W[47]).toBeGreaterThan(5));
});

describe("a freezer", () => {
  it("takes freezing heat from what it is stocked with", () => {
    const freezer = { ...portable, freezerShare: 1, rated_Wh_day: 600 };
    const at = (restock_kg_day: number): number =>
      compressorFridge({ ...freezer, restock_kg_day }, steady(25, 24)).power_W[23]!;
    const cop = (0.3 * (273.15 - 32)) / (37 + 32);
    const heat_Wh = 24 * cop * (at(1) - at(0));
    expect(heat_Wh).toBeGreaterThan(110); // 1 kg from 25 to −18 °C; chilling alone would be 44
    expect(heat_Wh).toBeLessThan(125);
  });
});

it("an empty series gives empty columns, a bad one is named", () => {
  expect(compressorFridge(familyFridge, new Float64Array(0)).power_W).toHaveLength(0);
  expect(() => compressorFridge(familyFridge, Float64Array.of(NaN))).toThrow(
    "fridge: bay_C[0] must be -90 to 120, got NaN",
  );
});
