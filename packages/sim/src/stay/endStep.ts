import { resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import { dropMoment_h, rest, type Held } from "./dropMoment.ts";
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

const after: Held = { q1: 0.5, q: 0.5 };

/**
 * Takes the bank to the end of a step at the net current in `state`. Cut-off is tested at the volts under load at the end; where it
 * fails, the moment is found inside the step and the rest of it is at rest.
 */
export function endStep(bank: BankModel, state: RunState, end: StepEnd): void {
  const { tank, available_Ah } = bank;
  const { step_h } = tank;
  const { net_A } = state;
  after.q1 = Math.min(available_Ah, availableAfter_Ah(tank, state.q1, state.q, net_A));
  after.q = state.q - net_A * step_h;
  end.step_h = step_h;
  end.powered = state.on;
  end.volts_V = endVolts_V(bank, after, net_A);
  end.drops = state.on && net_A > 0 && (after.q1 <= 0 || end.volts_V < bank.cutOff_V);
  end.lasted_h = step_h;
  if (end.drops) {
    after.q1 = state.q1;
    after.q = state.q;
    end.lasted_h = dropMoment_h(bank, after, net_A);
    rest(bank, after, step_h - end.lasted_h);
    end.volts_V = bank.volts.at(after.q1);
  }
  noteMoments(bank, state, end);
  end.selfDischarge_Ah = after.q * bank.stepLoss;
  const keeps = 1 - bank.stepLoss;
  state.q1 = after.q1 * keeps;
  state.q = after.q * keeps;
  state.steps++;
  end.held_Ah = state.q;
}

/** Terminal volts at the end of a step, charging included. */
function endVolts_V(bank: BankModel, { q1, q }: Held, net_A: number): number {
  const rested_V = bank.volts.at(q1);
  if (net_A === 0) return rested_V;
  const loaded_V = rested_V - net_A * resistanceAt_Ohm(bank, q * bank.perFull);
  return net_A > 0 ? loaded_V : Math.min(bank.absorption_V, loaded_V + bank.gap_V);
}

function noteMoments(bank: BankModel, state: RunState, { lasted_h, drops, volts_V }: StepEnd): void {
  const { step_h, reserve_Ah } = bank;
  const { net_A } = state;
  const start_h = state.steps * step_h;
  if (drops && !(state.drop_h >= 0)) state.drop_h = start_h + lasted_h;
  if (!(state.reserve_h >= 0) && (after.q <= reserve_Ah || state.drop_h >= 0)) {
    const crossed_h = net_A > 0 ? (state.q - reserve_Ah) / net_A : step_h;
    state.reserve_h = start_h + Math.min(crossed_h, lasted_h);
  }
  if (after.q < state.lowest_Ah) {
    state.lowest_Ah = after.q;
    state.lowestStep = state.steps + 1;
  }
  if (drops) state.on = false;
  else if (!state.on && volts_V >= bank.returns_V) {
    state.on = true;
    if (!(state.return_h >= 0)) state.return_h = start_h + step_h;
  }
}
