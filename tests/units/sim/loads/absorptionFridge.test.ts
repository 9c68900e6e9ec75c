import { describe, expect, it } from "vitest";
import { absorptionCop } from "../../../../packages/sim/src/loads/absorptionFridge.ts";
import { absorptionFridge } from "../../../../packages/sim/src/loads/index.ts";
import type { AbsorptionFridge } from "../../../../packages/sim/src/study.ts";
import { steady, sum, threeWay } from "../../../fixtures/loads.ts";

const ruled = (mode: "gas" | "dc" | "ac"): AbsorptionFridge["thermostat"] => ({
  gas: mode === "gas",
  dc: mode === "dc",
  ac: mode === "ac",
});
const day = (series: Float64Array): Float64Array => series.slice(-24);

describe("flat out on gas", () => {
  it("freezes on a cold night", () => {
    const nights = Float64Array.from({ length: 240 }, (_, i) => 12 - 8 * Math.cos((2 * Math.PI * (i - 14)) / 24));
    expect(Math.min(...absorptionFridge(threeWay, nights, null).inside_C)).toBeLessThan(0);
  });
  it("burns 1.4 times its rating and draws its controls", () => {
    const { gas_g, controls_A, campedElement, drivingElement } = absorptionFridge(threeWay, steady(32, 48), null);
    expect(sum(day(gas_g))).toBeCloseTo(1.4 * 270, 9);
    expect(controls_A[47]).toBe(0.5);
    expect(sum(campedElement) + sum(drivingElement)).toBe(0);
  });
  it("meets its own equation when it has settled", () => {
    const bay_C = 10;
    const inside_C = absorptionFridge(threeWay, steady(bay_C, 2000), null).inside_C[1999]!;
    const rated_W = (270 * 12.8) / 24;
    const cooling_W = 1.4 * rated_W * 0.2 * (1 + 0.02 * 15) * Math.min(1, (inside_C + 18) / 23);
    expect(cooling_W).toBeCloseTo(((rated_W * 0.2) / 20) * (bay_C - inside_C), 6);
  });
});

describe("with a thermostat", () => {
  const fridge = { ...threeWay, thermostat: ruled("gas") };
  it("holds 5 °C, and burns its rating at 25 °C", () => {
    const { gas_g, inside_C } = absorptionFridge(fridge, steady(25, 48), null);
    expect(inside_C[47]).toBeCloseTo(5, 6);
    expect(sum(day(gas_g))).toBeCloseTo(270, 6);
  });
  it("goes out in the cold and is flat out in the heat", () => {
    expect(sum(day(absorptionFridge(fridge, steady(3, 200), null).gas_g))).toBe(0);
    const hot = absorptionFridge(fridge, steady(40, 400), null);
    expect(sum(day(hot.gas_g))).toBeCloseTo(1.4 * 270, 9);
    expect(hot.inside_C[399]).toBeCloseTo(20.4, 1);
  });
});

describe("driving", () => {
  const hour = Float64Array.from({ length: 48 }, (_, i) => (i === 30 ? 1 : i === 31 ? 0.5 : 0));
  it("on gas, the element runs while driving only and the burner while camped only", () => {
    const { drivingElement, campedElement, gas_g, controls_A } = absorptionFridge(threeWay, steady(30, 48), hour);
    expect([29, 30, 31, 32].map((i) => drivingElement[i])).toEqual([0, 1, 1, 0]);
    expect(sum(campedElement)).toBe(0);
    expect([gas_g[30], controls_A[30], controls_A[31]]).toEqual([0, 0, 0.25]);
    expect(gas_g[31]).toBeCloseTo((0.5 * 1.4 * 270) / 24, 9);
  });
  it("with a thermostat on both, the two share the duty that holds 5 °C", () => {
    const fridge = { ...threeWay, thermostat: { gas: true, dc: true, ac: false } };
    const { inside_C, drivingElement } = absorptionFridge(fridge, steady(25, 48), hour);
    expect(inside_C[31]).toBeCloseTo(5, 6);
    expect(drivingElement[30]).toBeCloseTo(144 / 170, 6); // rated heat over element watts
  });
});

describe("on electricity", () => {
  it.each([
    [12, 111, 222], // 24 hours of watts over volts: the least and the most of typical rating plates (from memory)
    [12, 207.5, 415],
  ])("left on at %i V, %f W takes %i Ah a day", (volts, element_dc_W, Ah_day) => {
    const { campedElement } = absorptionFridge({ ...threeWay, burns: "dc", element_dc_W }, steady(20, 48), null);
    expect((sum(day(campedElement)) * element_dc_W) / volts).toBeCloseTo(Ah_day, 6);
  });
  it("dc runs camped and driving alike, with no gas and no controls", () => {
    const driving = steady(0.5, 48);
    const got = absorptionFridge({ ...threeWay, burns: "dc" }, steady(20, 48), driving);
    expect([got.campedElement[47], got.drivingElement[47]]).toEqual([1, 1]);
    expect(sum(got.gas_g) + sum(got.controls_A) + sum(got.elementAcShare)).toBe(0);
  });
  it("a thermostat on dc lowers the duty to what holds 5 °C", () => {
    const { campedElement } = absorptionFridge(
      { ...threeWay, burns: "dc", thermostat: ruled("dc") },
      steady(25, 48),
      null,
    );
    expect(campedElement[47]).toBeCloseTo(144 / 170, 6);
  });
  it("ac uses the ac element throughout", () => {
    const got = absorptionFridge({ ...threeWay, burns: "ac" }, steady(20, 48), steady(0.5, 48));
    expect(new Set(got.elementAcShare)).toEqual(new Set([1]));
    expect(sum(got.campedElement) + sum(got.drivingElement) + sum(got.gas_g)).toBe(0);
    const held = absorptionFridge({ ...threeWay, burns: "ac", thermostat: ruled("ac") }, steady(25, 48), null);
    expect(held.elementAcShare[47]).toBeCloseTo(144 / 190, 6);
  });
});

it("cooling stays under the best of a published test: 0.28 of the heat at 22 °C, 110 W", () => {
  // ASME HT2017, an experimental diffusion-absorption unit fed 250 to 700 W; small caravan units 0.15 to 0.25, from memory.
  expect(absorptionCop(22)).toBeLessThan(0.28);
  expect(absorptionCop(22)).toBeGreaterThan(0.15);
  expect(absorptionCop(22) * ((1.4 * 270 * 12.8) / 24)).toBeLessThan(110);
});

describe("bad input is named", () => {
  it.each<[string, Partial<AbsorptionFridge>]>([
    ["three-way: gas_g_day must be more than 0, got 0", { gas_g_day: 0 }],
    ["three-way: element_dc_W must be 0 to 10000, got NaN", { element_dc_W: NaN }],
    ["three-way: volume_L must be 1 to 5000, got -3", { volume_L: -3 }],
  ])("%s", (message, change) =>
    expect(() => absorptionFridge({ ...threeWay, ...change }, steady(20, 2), null)).toThrow(new RangeError(message)),
  );
  it("a driving share of another length, or beyond 1", () => {
    expect(() => absorptionFridge(threeWay, steady(20, 2), steady(0, 3))).toThrow(
      "drivingShare must be as long as bay_C, 2, got 3",
    );
    expect(() => absorptionFridge(threeWay, steady(20, 2), steady(2, 2))).toThrow(
      "drivingShare[0] must be 0 to 1, got 2",
    );
  });
});
