import { hourOf, type BankModel } from "../bank/bankModel.ts";
import { newBus, type Bus } from "./bus.ts";
import type { Drive } from "./drive.ts";
import { endStep, newStepEnd, type StepEnd } from "./endStep.ts";
import { noteStep, unusedCauses, type Ledger } from "./ledger.ts";
import type { RunState } from "./runState.ts";
import { settleStep } from "./settleStep.ts";
import { newStep, type Step } from "./step.ts";

const bus: Bus = newBus();
const step: Step = newStep();
const end: StepEnd = newStepEnd();

/** Takes a run through one step of any kind. Volts, resistance and losses of a step are those half-way through it. */
export function oneStep(drive: Drive, state: RunState, held_Ah: Float64Array | null, ledger: Ledger | null): void {
  const { bank } = drive;
  const h = hourOf(bank, state.steps);
  bus.absorption_V = bank.absorption_V;
  bus.gap_V = bank.gap_V;
  bus.q1_Ah = state.q1;
  bus.q_Ah = state.q;
  step.watts = ledger !== null;
  settleStep(drive, h, state.on, bus, step);
  state.net_A = step.drawn_A - step.stored_A;
  endStep(bank, state, end);
  if (held_Ah !== null) held_Ah[state.steps] = state.q;
  if (ledger === null) return;
  // where the bank and not the source limits, the terminals stand where they met, to the end of the step
  if (!end.drops && bus.bank_A >= 0 && bus.volts_V > end.volts_V) end.volts_V = bus.volts_V;
  noteStep(ledger, h, step, end, causeOf(bank, end.drops));
}

/** What kept the bank from taking more, from the acceptance that the bus was settled with. */
function causeOf(bank: BankModel, dropped: boolean): number {
  if (dropped) return unusedCauses.indexOf("loads-dropped");
  if (!bank.takesCharge) return unusedCauses.indexOf("too-cold");
  return unusedCauses.indexOf(bus.accepts_A < bank.bulk_A ? "bank-full" : "bank-limit");
}
