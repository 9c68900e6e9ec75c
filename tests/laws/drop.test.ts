import fc from "fast-check";
import { expect, it } from "vitest";
import { bankModel, resistanceAt_Ohm, tankStep } from "../../packages/sim/src/bank/index.ts";
import { availableAfter_Ah } from "../../packages/sim/src/bank/twoTanks.ts";
import { dropInStep } from "../../packages/sim/src/stay/dropInStep.ts";
import { newRunState } from "../../packages/sim/src/stay/runState.ts";
import { anyBank, int, scaled } from "./arbitraries/study.ts";

const step_h = 1;

it("loads drop when the volts under load, on the exact two tanks, come to the cut-off: to half a minute, of an hour's step", () => {
  let seen = 0;
  fc.assert(
    fc.property(anyBank, int(0, 35), scaled(0.02, 1, 500), scaled(0.02, 0.6, 500), (of, temp_C, held, rate) => {
      const bank = bankModel(of, temp_C, step_h);
      const q = held * bank.full_Ah;
      const state = { ...newRunState(), q1: q * bank.c, q, net_A: rate * bank.full_Ah };
      const up = (t_h: number): boolean => {
        const q1 =
          t_h > 0 ? availableAfter_Ah(tankStep(bank.c, bank.k_per_h, t_h), state.q1, q, state.net_A) : state.q1;
        const charge = (q - state.net_A * t_h) / bank.full_Ah;
        return q1 > 0 && bank.volts.at(q1) - state.net_A * resistanceAt_Ohm(bank, charge) >= bank.cutOff_V;
      };
      if (up(step_h)) return;
      seen++;
      let [from_h, to_h] = [0, step_h];
      for (let i = 0; up(0) && i < 50; i++) {
        const middle_h = (from_h + to_h) / 2;
        if (up(middle_h)) from_h = middle_h;
        else to_h = middle_h;
      }
      const drop = { lasted_h: NaN, q1: NaN, q: NaN };
      dropInStep(bank, state, drop);
      expect(Math.abs(drop.lasted_h - from_h)).toBeLessThan(0.5 / 60);
      expect(drop.q).toBeCloseTo(q - state.net_A * drop.lasted_h, 9);
      expect(drop.q1).toBeLessThanOrEqual(bank.available_Ah);
    }),
    { numRuns: 2000 },
  );
  expect(seen).toBeGreaterThan(200);
});
