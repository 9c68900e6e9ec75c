import { resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import { dropInStep, type DropStep } from "./dropInStep.ts";
import type { RunState } from "./runState.ts";

/** How a step ended. */
export interface StepEnd {
  step_h: number;
  /** hours of the step before loads dropped; all of it where they did not */
  lasted_h: number;
  /** loads were powered at its start */
  powered: boolean;
  /** and dropped in it */
  drops: boolean;
  /** at the terminals, at its end */
  volts_V: number;
  held_Ah: number;
  selfDischarge_Ah: number;
}

export const newStepEnd = (): StepEnd => ({
  step_h: 0.5,
  lasted_h: 0.5,
  powered: true,
  drops: false,
  volts_V: 0.5,
  held_Ah: 0.5,
  selfDischarge_Ah: 0.5,
});

const drop: DropStep = { lasted_h: 0.5, q1: 0.5, q: 0.5 };

/**
 * Takes the bank to the end of a step at the net current in `state`. Cut-off is tested at the volts under load at the end;
 * where it fails, the moment is found inside the step and the rest of it is at rest.
 * @param end filled in where it is given
 */
export function endStep(bank: BankModel, state: RunState, end: StepEnd | null): void {
  const { tank, available_Ah, volts, reserve_Ah, stepLoss } = bank;
  const { step_h } = tank;
  const { net_A, on, steps } = state;
  let q1 = availableAfter_Ah(tank, state.q1, state.q, net_A);
  if (q1 > available_Ah) q1 = available_Ah;
  let q = state.q - net_A * step_h;
  // at the terminals, charging included
  let volts_V = volts.at(q1);
  if (net_A !== 0) volts_V -= net_A * resistanceAt_Ohm(bank, q * bank.perFull);
  if (net_A < 0) volts_V = Math.min(bank.absorption_V, volts_V + bank.gap_V);
  const drops = on && net_A > 0 && (q1 <= 0 || volts_V < bank.cutOff_V);
  let lasted_h = step_h;
  if (drops) {
    dropInStep(bank, state, drop);
    lasted_h = drop.lasted_h;
    q1 = drop.q1;
    q = drop.q;
    volts_V = volts.at(q1);
  }
  const start_h = steps * step_h;
  if (drops && !(state.drop_h >= 0)) state.drop_h = start_h + lasted_h;
  if (!(state.reserve_h >= 0) && (q <= reserve_Ah || state.drop_h >= 0)) {
    const crossed_h = net_A > 0 ? (state.q - reserve_Ah) / net_A : step_h;
    state.reserve_h = start_h + Math.min(crossed_h, lasted_h);
  }
  if (q < state.lowest_Ah) {
    state.lowest_Ah = q;
    state.lowestStep = steps + 1;
  }
  if (drops) state.on = false;
  else if (!on && volts_V >= bank.returns_V) {
    state.on = true;
    if (!(state.return_h >= 0)) state.return_h = start_h + step_h;
  }
  state.q1 = q1 - q1 * stepLoss;
  state.q = q - q * stepLoss;
  state.steps = steps + 1;
  if (end === null) return;
  end.step_h = step_h;
  end.lasted_h = lasted_h;
  end.powered = on;
  end.drops = drops;
  end.volts_V = volts_V;
  end.held_Ah = state.q;
  end.selfDischarge_Ah = q * stepLoss;
}
