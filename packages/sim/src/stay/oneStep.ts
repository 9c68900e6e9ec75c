import { atShare, chargeWhenShown_Ah, resistanceAt_Ohm, shownCharge, type BankModel } from "../bank/bankModel.ts";
import type { Tanks } from "../bank/twoTanks.ts";
import { newBus, type Bus } from "./bus.ts";
import type { Drive } from "./drive.ts";
import { dropMoment_h, rest } from "./dropMoment.ts";
import { noteStep, unusedCauses, type Ledger, type StepEnd } from "./ledger.ts";
import type { RunState } from "./runState.ts";
import { settleStep } from "./settleStep.ts";
import { newStep, type Step } from "./step.ts";

const bus: Bus = newBus();
const step: Step = newStep();
const after: Tanks = { q1: 0.5, q2: 0.5 };
const end: StepEnd = {
  step_h: 0.5,
  lasted_h: 0.5,
  powered: true,
  volts_V: 0.5,
  held_Ah: 0.5,
  selfDischarge_Ah: 0.5,
  cause: 0,
};

/**
 * Takes a run through one step of any kind. Volts, resistance and losses of a step are those half-way through it. Cut-off is
 * tested at the volts under load at its end; where it fails, the moment is found inside it and the rest of it is at rest.
 */
export function oneStep(drive: Drive, state: RunState, shown: Float32Array | null, ledger: Ledger | null): void {
  const { bank } = drive;
  const { step_h, e, gain, perAmp_h } = bank.tank;
  const available_Ah = bank.c * bank.full_Ah;
  const h = Math.floor(state.steps * step_h + 1e-9);
  const { q1, q2, on } = state;
  const q = q1 + q2;
  bus.absorption_V = bank.absorption_V;
  bus.gap_V = bank.gap_V;
  bus.q1_Ah = q1;
  bus.q2_Ah = q2;
  settleStep(drive, h, on, bus, step);
  const net_A = step.drawn_A - step.stored_A;

  let n = q - net_A * step_h;
  let n1 = Math.min(available_Ah, q1 * e + q * gain - net_A * perAmp_h);
  let end_V = endVolts_V(bank, n1 / available_Ah, n * bank.perFull, net_A);
  let lasted_h = step_h;
  const drops = on && net_A > 0 && (n1 <= 0 || end_V < bank.cutOff_V);
  if (drops) {
    after.q1 = q1;
    after.q2 = q2;
    lasted_h = dropMoment_h(bank, after, net_A);
    rest(bank, after, step_h - lasted_h);
    n1 = after.q1;
    n = n1 + after.q2;
    end_V = atShare(bank.volts, n1 / available_Ah);
  }
  noteMoments(state, bank, net_A, n, lasted_h, drops);
  const keeps = 1 - bank.stepLoss;
  state.q1 = n1 * keeps;
  state.q2 = (n - n1) * keeps;
  state.steps++;
  if (shown !== null) shown[state.steps] = shownCharge(bank, state.q1 + state.q2);
  if (ledger !== null) {
    end.step_h = step_h;
    end.lasted_h = lasted_h;
    end.powered = on;
    end.volts_V = end_V;
    end.held_Ah = state.q1 + state.q2;
    end.selfDischarge_Ah = n * bank.stepLoss;
    end.cause = causeOf(bank, drops);
    noteStep(ledger, h, step, end);
  }
  if (drops) state.on = false;
  else if (!on && end_V >= bank.returns_V) {
    state.on = true;
    if (!(state.return_h >= 0)) state.return_h = state.steps * step_h;
  }
}

/** Terminal volts at the end of a step, charging included. */
function endVolts_V(bank: BankModel, available: number, charge: number, net_A: number): number {
  const rested_V = atShare(bank.volts, available);
  if (net_A === 0) return rested_V;
  const loaded_V = rested_V - net_A * resistanceAt_Ohm(bank, charge);
  return net_A > 0 ? loaded_V : Math.min(bank.absorption_V, loaded_V + bank.gap_V);
}

function noteMoments(
  state: RunState,
  bank: BankModel,
  net_A: number,
  n: number,
  lasted_h: number,
  drops: boolean,
): void {
  const { step_h } = bank.tank;
  const start_h = state.steps * step_h;
  if (drops && !(state.drop_h >= 0)) state.drop_h = start_h + lasted_h;
  const reserve_Ah = chargeWhenShown_Ah(bank, bank.reserve);
  if (!(state.reserve_h >= 0) && (n <= reserve_Ah || state.drop_h >= 0)) {
    const crossed_h = net_A > 0 ? (state.q1 + state.q2 - reserve_Ah) / net_A : step_h;
    state.reserve_h = start_h + Math.min(crossed_h, lasted_h);
  }
  if (n < state.lowest_Ah) {
    state.lowest_Ah = n;
    state.lowestStep = state.steps + 1;
  }
}

/** What kept the bank from taking more, from the acceptance that the bus was settled with. */
function causeOf(bank: BankModel, dropped: boolean): number {
  if (dropped) return unusedCauses.indexOf("loads-dropped");
  if (!bank.takesCharge) return unusedCauses.indexOf("too-cold");
  return unusedCauses.indexOf(bus.accepts_A < bank.bulk_A ? "bank-full" : "bank-limit");
}
