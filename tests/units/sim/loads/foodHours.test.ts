import { describe, expect, it } from "vitest";
import { calibrateFridge, foodHours } from "../../../../packages/sim/src/loads/index.ts";
import { familyFridge, steady } from "../../../fixtures/loads.ts";

const warm = steady(32, 200);
const { rate_per_h } = calibrateFridge(familyFridge);
const hoursFrom = (start_C: number, to_C: number, bay_C: number): number =>
  Math.log((bay_C - start_C) / (bay_C - to_C)) / rate_per_h;

describe("after a cut-off", () => {
  it("a family fridge at 4 °C passes 5 °C within an hour in the warm", () => {
    const { hoursFromCutOffTo5C } = foodHours(familyFridge, warm, 10, 4, null);
    expect(hoursFromCutOffTo5C).toBeGreaterThan(0.3);
    expect(hoursFromCutOffTo5C).toBeLessThan(1);
  });
  it("follows the exponential exactly, wherever in an hour it begins", () => {
    const food = foodHours(familyFridge, warm, 10.3, 4, 30);
    expect(food.hoursFromCutOffTo5C).toBeCloseTo(hoursFrom(4, 5, 32), 9);
    expect(food.hoursFromCutOffTo8C).toBeCloseTo(hoursFrom(4, 8, 32), 9);
    expect(food.hoursAbove5C).toBeCloseTo(30 - 10.3 - hoursFrom(4, 5, 32), 9);
  });
  it("takes each hour's own bay temperature: a cold night only puts it off", () => {
    const bay_C = Float64Array.from({ length: 60 }, (_, i) => (i < 20 ? 0 : 30));
    const cooled_C = 4 * Math.exp(-rate_per_h * 10);
    const food = foodHours(familyFridge, bay_C, 10, 4, null);
    expect(food.hoursFromCutOffTo5C).toBeCloseTo(10 + hoursFrom(cooled_C, 5, 30), 9);
  });
  it("is null where the line is not passed within the hours given", () => {
    const food = foodHours(familyFridge, steady(4.5, 300), 5, 4, 200);
    expect(food).toEqual({ hoursFromCutOffTo5C: null, hoursFromCutOffTo8C: null, hoursAbove5C: 0 });
    expect(foodHours(familyFridge, steady(32, 11), 10, 4, null).hoursFromCutOffTo8C).toBeNull();
  });
});

describe("hours above 5 °C", () => {
  it("are 0 where loads return before it is passed", () =>
    expect(foodHours(familyFridge, warm, 10, 4, 10.1).hoursAbove5C).toBe(0));
  it("are null where loads do not return, or the fridge is set to 5 °C or more", () => {
    expect(foodHours(familyFridge, warm, 10, 4, null).hoursAbove5C).toBeNull();
    expect(foodHours({ ...familyFridge, inside_C: 5 }, warm, 10, 5, 20).hoursAbove5C).toBeNull();
  });
  it("count from the cut-off where the cabinet had already passed it", () => {
    const food = foodHours(familyFridge, warm, 10, 6, 20);
    expect([food.hoursFromCutOffTo5C, food.hoursAbove5C]).toEqual([0, 10]);
    expect(foodHours(familyFridge, warm, 10, 9, 20).hoursFromCutOffTo8C).toBe(0);
  });
});

it("bad input is named", () => {
  expect(() => foodHours(familyFridge, warm, 201, 4, null)).toThrow("cutOff_h must be 0 to 200, got 201");
  expect(() => foodHours(familyFridge, warm, 10, 4, 9)).toThrow("loadsReturn_h must not be before cutOff_h 10, got 9");
  expect(() => foodHours(familyFridge, warm, 10, NaN, null)).toThrow("startInside_C must be");
});
