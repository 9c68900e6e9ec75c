import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  acceptance_A,
  acceptanceAt_A,
  bankModel,
  chargeWhenShown_Ah,
  chemistries,
  mostDischarge_A,
  resistanceAt_Ohm,
  restedVolts_V,
  shownCharge,
  stepTanks,
  stored_A,
  tankStep,
  type BankModel,
} from "../../packages/sim/src/bank/index.ts";
import { anyBank, int, scaled } from "./arbitraries/study.ts";

const anyTemp_C = int(-15, 45);
const anyModel: fc.Arbitrary<BankModel> = fc
  .tuple(anyBank, anyTemp_C, fc.constantFrom(1, 0.5, 0.1))
  .map(([bank, temp_C, step_h]) => bankModel(bank, temp_C, step_h));
const anyShare = scaled(0, 1, 1000);
const anyTanks = fc.record({ q1: scaled(0, 200, 10), q2: scaled(0, 200, 10) });
const anyKinetics = fc.record({ c: scaled(0.1, 1, 100), k: scaled(0.05, 3, 100) });

describe("two tanks", () => {
  it("keep the charge: what leaves is current times time", () => {
    fc.assert(
      fc.property(anyTanks, anyKinetics, scaled(-60, 60, 10), scaled(0.05, 6, 100), (tanks, { c, k }, amps, hours) => {
        const { q1, q2 } = stepTanks(tanks, amps, tankStep(c, k, hours));
        const before = tanks.q1 + tanks.q2;
        expect(Math.abs(q1 + q2 - (before - amps * hours))).toBeLessThanOrEqual(1e-9 * (1 + before + 60 * hours));
      }),
    );
  });
  it("end the same in one step or in two", () => {
    fc.assert(
      fc.property(anyTanks, anyKinetics, scaled(-30, 30, 10), scaled(0.1, 3, 100), (tanks, { c, k }, amps, hours) => {
        const whole = stepTanks(tanks, amps, tankStep(c, k, hours));
        const part = tankStep(c, k, hours / 2);
        const halves = stepTanks(stepTanks(tanks, amps, part), amps, part);
        expect(halves.q1).toBeCloseTo(whole.q1, 8);
        expect(halves.q2).toBeCloseTo(whole.q2, 8);
      }),
    );
  });
  it("level out when nothing is drawn: neither passes the other's height", () => {
    fc.assert(
      fc.property(anyTanks, anyKinetics, scaled(0.05, 6, 100), (tanks, { c, k }, hours) => {
        fc.pre(c < 1);
        const after = stepTanks(tanks, 0, tankStep(c, k, hours));
        const apart = ({ q1, q2 }: { q1: number; q2: number }): number => q1 / c - q2 / (1 - c);
        expect(apart(after) * apart(tanks)).toBeGreaterThanOrEqual(-1e-9);
        expect(Math.abs(apart(after))).toBeLessThanOrEqual(Math.abs(apart(tanks)) + 1e-9);
      }),
    );
  });
  it("are just empty after the most that a step can draw", () => {
    fc.assert(
      fc.property(anyTanks, anyKinetics, scaled(0.1, 2, 100), (tanks, { c, k }, hours) => {
        const step = tankStep(c, k, hours);
        const { q1 } = stepTanks(tanks, mostDischarge_A(tanks, step), step);
        expect(Math.abs(q1)).toBeLessThanOrEqual(1e-9 * (1 + tanks.q1 + tanks.q2));
      }),
    );
  });
});

describe("a bank on charge", () => {
  it("never takes more than it misses, nor more than its bulk limit", () => {
    fc.assert(
      fc.property(anyModel, anyShare, scaled(0, 400, 10), (model, share, offered_A) => {
        const q = share * model.full_Ah;
        const stored = stored_A(model, q, share, offered_A);
        expect(stored).toBeGreaterThanOrEqual(0);
        expect(stored).toBeLessThanOrEqual(offered_A + 1e-9);
        expect(stored * model.step_h).toBeLessThanOrEqual(model.full_Ah - q + 1e-9);
        expect(acceptance_A(model, q)).toBeLessThanOrEqual(model.bulk_A + 1e-9);
      }),
    );
  });
  it("takes no less when more is offered, when emptier, or at higher volts", () => {
    fc.assert(
      fc.property(anyModel, anyShare, anyShare, scaled(12, 14.4, 10), scaled(0, 1, 10), (model, a, b, volts, more) => {
        const [low = 0, high = 0] = [a, b].sort((x, y) => x - y);
        const twelves = model.bank.nominal_V / 12;
        const [empty, fuller] = [low * model.full_Ah, high * model.full_Ah];
        expect(acceptance_A(model, empty) - acceptance_A(model, fuller)).toBeGreaterThanOrEqual(-1e-9);
        const weak = acceptanceAt_A(model, empty, volts * twelves);
        expect(acceptanceAt_A(model, empty, (volts + more) * twelves) - weak).toBeGreaterThanOrEqual(-1e-9);
        expect(stored_A(model, empty, low, 20 + more) - stored_A(model, empty, low, 20)).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });
  it("takes nothing when lithium stands below freezing", () => {
    const cold = fc.tuple(anyBank, int(-20, -1)).map(([bank, t]) => bankModel({ ...bank, chemistry: "lfp" }, t));
    fc.assert(fc.property(cold, anyShare, (model, share) => stored_A(model, share * model.full_Ah, share, 50) === 0));
  });
});

describe("a bank's volts", () => {
  it("rise with charge, and its resistance falls to half", () => {
    fc.assert(
      fc.property(anyModel, anyShare, anyShare, (model, a, b) => {
        const [low = 0, high = 0] = [a, b].sort((x, y) => x - y);
        expect(restedVolts_V(model, high)).toBeGreaterThanOrEqual(restedVolts_V(model, low) - 1e-12);
        expect(resistanceAt_Ohm(model, high)).toBeLessThanOrEqual(resistanceAt_Ohm(model, low) + 1e-15);
        expect(resistanceAt_Ohm(model, 0)).toBeCloseTo(2 * resistanceAt_Ohm(model, 1), 12);
      }),
    );
  });
  it("of 24 V are twice those of 12 V", () => {
    fc.assert(
      fc.property(anyBank, anyTemp_C, anyShare, (bank, temp_C, share) => {
        const [half, whole] = ([12, 24] as const).map((nominal_V) => bankModel({ ...bank, nominal_V }, temp_C));
        expect(restedVolts_V(whole!, share)).toBeCloseTo(2 * restedVolts_V(half!, share), 9);
        expect(resistanceAt_Ohm(whole!, share)).toBeCloseTo(2 * resistanceAt_Ohm(half!, share), 12);
      }),
    );
  });
});

describe("shown charge", () => {
  it("and the charge held turn into one another", () => {
    fc.assert(
      fc.property(anyModel, anyShare, (model, share) => {
        expect(shownCharge(model, chargeWhenShown_Ah(model, share))).toBeCloseTo(share, 9);
      }),
    );
  });
});

it("every chemistry's tables rise with charge and lie within what is possible", () => {
  for (const { restedVolts, chargeEfficiency, capacityByTemp } of Object.values(chemistries)) {
    for (const table of [restedVolts, chargeEfficiency, capacityByTemp]) {
      table.forEach(([x], i) => expect(i === 0 || x > table[i - 1]![0]).toBe(true));
    }
    restedVolts.forEach(([, volts], i) => expect(i === 0 || volts > restedVolts[i - 1]![1]).toBe(true));
    for (const [, efficiency] of chargeEfficiency) expect(efficiency > 0 && efficiency <= 1).toBe(true);
  }
});
