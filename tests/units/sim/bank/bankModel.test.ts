import { describe, expect, it } from "vitest";
import { acceptanceAt_A, bankModel, restedVolts_V, shownCharge } from "../../../../packages/sim/src/bank/index.ts";
import { lithium, tiredAgm, twoAgm } from "../../../fixtures/stays.ts";

describe("a bank made ready", () => {
  it("holds more than its 20 h capacity, shown from full down", () => {
    const model = bankModel(twoAgm, 25);
    expect(model.capacity_Ah).toBe(200);
    expect(model.full_Ah).toBeCloseTo(216.8, 9);
    expect(shownCharge(model, model.full_Ah)).toBe(1);
    expect(shownCharge(model, model.full_Ah - 100)).toBeCloseTo(0.5, 9);
    expect(shownCharge(model, 0)).toBe(0);
  });
  it("tired, holds its share, takes charge slower, and is no stiffer for it", () => {
    const [fresh, tired] = [bankModel(twoAgm, 25), bankModel(tiredAgm, 25)];
    expect(tired.capacity_Ah).toBe(120);
    expect(tired.taper_per_h).toBe(0.6);
    expect(fresh.taper_per_h).toBe(1.1);
    expect(tired.resistance_Ohm).toBe(fresh.resistance_Ohm);
  });
  it("of two 100 Ah in parallel has half of one's resistance", () => {
    expect(bankModel(twoAgm, 25).resistance_Ohm).toBeCloseTo(0.0025, 12);
  });
  it("reads its tables on and between their points, and holds at the ends", () => {
    const model = bankModel(twoAgm, 25);
    expect([1, 0.75, 0.5, 0.25, 0.1, 0].map((share) => restedVolts_V(model, share))).toEqual(
      [12.85, 12.5, 12.15, 11.85, 11.45, 10.6].map((volts): unknown => expect.closeTo(volts, 9)),
    );
    expect(restedVolts_V(model, 0.6)).toBeCloseTo(12.29, 9);
    expect(restedVolts_V(model, -3)).toBeCloseTo(10.6, 9);
    expect(restedVolts_V(model, 7)).toBeCloseTo(12.85, 9);
    expect(model.efficiency.at(0.85)).toBeCloseTo(0.945, 9);
  });
  it("takes volts and reserve of its own where they are given", () => {
    const model = bankModel({ ...twoAgm, cutOff_V: 11.8, absorption_V: 14.7, reserve: 0.3 }, 25);
    expect([model.cutOff_V, model.absorption_V, model.reserve]).toEqual([11.8, 14.7, 0.3]);
  });
  it("reads rested volts of its own between the very points that were given", () => {
    const restedVolts = [
      { share: 0, volts: 11 },
      { share: 0.43, volts: 12 },
      { share: 1, volts: 13 },
    ];
    const model = bankModel({ ...twoAgm, restedVolts }, 25);
    expect([0.215, 0.43, 0.715].map((share) => restedVolts_V(model, share))).toEqual(
      [11.5, 12, 12.5].map((volts): unknown => expect.closeTo(volts, 9)),
    );
  });
  it("of lithium has no cut-off but its own, and takes no charge in frost", () => {
    expect(bankModel(lithium, 10).cutOff_V).toBe(-Infinity);
    expect(bankModel(lithium, 0).takesCharge).toBe(true);
    expect(bankModel(lithium, -0.1).takesCharge).toBe(false);
  });
});

describe("a charger set low", () => {
  // model constants, chosen: the taper of AGM is 1.1, 0.4 and 0.15 /h at 14.4, 13.8 and 13.4 V
  it.each([
    [14.7, 1.1],
    [14.4, 1.1],
    [13.8, 0.4],
    [13.4, 0.15],
  ])("at %d V takes what is missing at %d /h, on 24 V alike", (absorption_V, taper_per_h) => {
    for (const twelves of [1, 2] as const) {
      const bank = { ...twoAgm, nominal_V: (12 * twelves) as 12 | 24, absorption_V: absorption_V * twelves };
      expect(bankModel(bank, 25).takenUp_per_h).toBeCloseTo(1 - Math.exp(-taper_per_h), 9);
    }
  });
  it("does not change what a cable's volts let in", () => {
    const taken = (absorption_V: number | null) =>
      acceptanceAt_A(bankModel({ ...twoAgm, absorption_V }, 25), 160, 13.4);
    expect(taken(14.7)).toBeCloseTo(taken(null), 9);
    expect(taken(13.8)).toBeCloseTo(taken(null), 9);
  });
});

describe("what is refused", () => {
  it.each([
    ["no capacity", () => bankModel({ ...twoAgm, capacity_Ah: 0 }, 25), /capacity_Ah must be 1 to 100000, got 0/],
    ["NaN", () => bankModel({ ...twoAgm, capacity_Ah: NaN }, 25), /capacity_Ah .* got NaN/],
    ["a condition over 1", () => bankModel({ ...twoAgm, condition: 1.2 }, 25), /condition must be 0.05 to 1, got 1.2/],
    ["a temperature that is none", () => bankModel(twoAgm, Number("warm")), /temp_C .* got NaN/],
    ["a step of no length", () => bankModel(twoAgm, 25, 0), /step_h/],
    [
      "a step that does not fill the hour",
      () => bankModel(twoAgm, 25, 0.4),
      /step_h must be one over a whole number, got 0.4/,
    ],
  ])("%s", (_what, make, says) => expect(make).toThrow(says));
});
