import { acceptance_A, stored_A } from "../bank/acceptance.ts";
import { atShare, chargeWhenShown_Ah, resistanceAt_Ohm, shownCharge, type BankModel } from "../bank/bankModel.ts";
import { mustLie } from "../numeric/must.ts";
import { newBus, settle, type Bus } from "./bus.ts";
import { dropMoment_h, tanksAfter } from "./dropMoment.ts";
import type { Drive } from "./drive.ts";
import { noteStep, unusedCauses, type Ledger, type StepEnd } from "./ledger.ts";
import { endVolts_V, settleCamped, settleMixed } from "./mixedHours.ts";
import { newStep, type Step } from "./step.ts";

/** What a run found. Hours from arrival; NaN where it did not happen. */
export interface Found {
  /** loads first dropped */
  drop_h: number;
  /** shown charge first passed the reserve; never later than the drop */
  reserve_h: number;
  /** loads came back after the first drop */
  return_h: number;
  /** lowest shown charge */
  lowest: number;
  /** hour after which it stood there */
  lowest_h: number;
}

export const newFound = (): Found => ({ drop_h: NaN, reserve_h: NaN, return_h: NaN, lowest: 1, lowest_h: 0 });

export interface RunOptions {
  /** end at the first drop */
  readonly stopAtDrop?: boolean;
  /** shown charge after each step, from the start: hours × steps an hour + 1 values */
  readonly shown?: Float32Array | null;
  readonly ledger?: Ledger | null;
}

const bus: Bus = newBus();
const step: Step = newStep();
const end: StepEnd = { step_h: 1, lasted_h: 1, powered: true, volts_V: 0, held_Ah: 0, selfDischarge_Ah: 0, cause: 0 };

/**
 * The hourly recurrence: steps one bank through a stay. The only code that runs for every hour, sky, setup and candidate,
 * so it keeps its state in locals, reuses its scratch and allocates nothing a step. Cut-off is tested at the volts under
 * load at the end of a step; where it fails, the moment is found inside it and the rest of that step is at rest.
 * @param found filled in and returned
 * @throws RangeError where startCharge is not 0 to 1 or a series is shorter than `hours`
 */
export function run(drive: Drive, found: Found, options: RunOptions = {}): Found {
  checkDrive(drive);
  const { bank, load_W, sun, kept, mixed, sunMost_A } = drive;
  const { full_Ah, tank, volts, cutOff_V } = bank;
  const { step_h, e, gain, perAmp_h } = tank;
  const { stopAtDrop = false, shown = null, ledger = null } = options;
  const stepsAnHour = Math.round(1 / step_h);
  const steps = drive.hours * stepsAnHour;
  const available_Ah = bank.c * full_Ah;
  const perAvailable = 1 / available_Ah;
  const reserve_Ah = chargeWhenShown_Ah(bank, bank.reserve);
  const keeps = 1 - bank.stepLoss;
  const plain = ledger === null && drive.sunTracks && drive.element_W === null;

  let q1 = drive.startCharge * available_Ah;
  let q2 = drive.startCharge * (full_Ah - available_Ah);
  let on = true;
  let lowest_Ah = q1 + q2;
  let lowest_h = 0;
  let drop_h = NaN;
  let reserve_h = lowest_Ah <= reserve_Ah ? 0 : NaN;
  let return_h = NaN;
  bus.absorption_V = bank.absorption_V;
  bus.gap_V = bank.gap_V;
  end.step_h = step_h;
  if (shown !== null) shown[0] = shownCharge(bank, lowest_Ah);

  let rested_V = atShare(volts, q1 * perAvailable);
  let resistance_Ohm = resistanceAt_Ohm(bank, lowest_Ah * bank.perFull);

  for (let s = 0; s < steps; s++) {
    const h = stepsAnHour === 1 ? s : (s / stepsAnHour) | 0;
    const q = q1 + q2;
    const camped = mixed === null || mixed.parked[h]! >= 1;
    const sun_here = sun[h]! * kept[h]!;

    let net_A = NaN;
    if (plain && camped) {
      const net_W = (on ? load_W[h]! : 0) - sun_here;
      net_A = plainNet_A(bank, q, rested_V, resistance_Ohm, net_W, sun_here, sunMost_A);
    }
    if (!(net_A <= Infinity)) {
      bus.rested_V = rested_V;
      bus.resistance_Ohm = resistance_Ohm;
      bus.accepts_A = acceptance_A(bank, q);
      if (camped) settleCamped(drive, h, on, sun_here, q, bus, step);
      else settleMixed(drive, mixed, h, on, q1, q2, bus, step);
      net_A = step.drawn_A - step.stored_A;
    }

    let n = q - net_A * step_h;
    let n1 = q1 * e + q * gain - net_A * perAmp_h;
    if (n1 > available_Ah) n1 = available_Ah;
    rested_V = atShare(volts, n1 * perAvailable);
    resistance_Ohm = resistanceAt_Ohm(bank, n * bank.perFull);
    let lasted_h = step_h;
    let dropped = false;
    if (on && net_A > 0 && (n1 <= 0 || rested_V - net_A * resistance_Ohm < cutOff_V)) {
      dropped = true;
      on = false;
      lasted_h = dropMoment_h(bank, { q1, q2 }, net_A);
      const rested = tanksAfter(bank, tanksAfter(bank, { q1, q2 }, net_A, lasted_h), 0, step_h - lasted_h);
      n1 = rested.q1;
      n = rested.q1 + rested.q2;
      rested_V = atShare(volts, n1 * perAvailable);
      resistance_Ohm = resistanceAt_Ohm(bank, n * bank.perFull);
      if (!(drop_h >= 0)) drop_h = s * step_h + lasted_h;
    }
    if (!(reserve_h >= 0) && (n <= reserve_Ah || drop_h >= 0)) {
      const crossed_h = net_A > 0 ? (q - reserve_Ah) / net_A : step_h;
      reserve_h = s * step_h + (crossed_h < lasted_h ? crossed_h : lasted_h);
    }
    if (n < lowest_Ah) {
      lowest_Ah = n;
      lowest_h = (s + 1) * step_h;
    }
    q1 = n1 * keeps;
    q2 = (n - n1) * keeps;
    if (shown !== null) shown[s + 1] = shownCharge(bank, q1 + q2);

    if (ledger !== null || !on) {
      end.volts_V = dropped ? rested_V : endVolts_V(bank, rested_V, resistance_Ohm, net_A);
      if (ledger !== null) {
        end.lasted_h = lasted_h;
        end.powered = on || dropped;
        end.held_Ah = q1 + q2;
        end.selfDischarge_Ah = n * bank.stepLoss;
        end.cause = causeOf(bank, dropped);
        noteStep(ledger, h, step, end);
      }
      if (!on && !dropped && end.volts_V >= bank.returns_V) {
        on = true;
        if (!(return_h >= 0)) return_h = (s + 1) * step_h;
      }
    }
    if (stopAtDrop && drop_h >= 0) break;
  }
  found.drop_h = drop_h;
  found.reserve_h = reserve_h;
  found.return_h = return_h;
  found.lowest = shownCharge(bank, lowest_Ah);
  found.lowest_h = lowest_h;
  return found;
}

/**
 * The commonest step in short: camped, a tracking charger, loads that are powers, no ledger. The same closed form as the
 * bus settles by (a test holds the two together). NaN where the charger's rating has a say, which the bus must then settle.
 */
function plainNet_A(
  bank: BankModel,
  q_Ah: number,
  rested_V: number,
  resistance_Ohm: number,
  net_W: number,
  sun_W: number,
  sunMost_A: number,
): number {
  const behind_V = net_W < 0 ? rested_V + bank.gap_V : rested_V;
  const square = behind_V * behind_V - 4 * resistance_Ohm * net_W;
  let volts_V = 0.5 * (square > 0 ? behind_V + Math.sqrt(square) : behind_V);
  if (net_W < 0 && volts_V > bank.absorption_V) volts_V = bank.absorption_V;
  if (sun_W > sunMost_A * volts_V) return NaN;
  const net_A = net_W / volts_V;
  return net_A >= 0 ? net_A : -stored_A(bank, q_Ah, -net_A);
}

/** What kept the bank from taking more, from the acceptance that the bus was settled with. */
function causeOf(bank: BankModel, dropped: boolean): number {
  if (dropped) return unusedCauses.indexOf("loads-dropped");
  if (!bank.takesCharge) return unusedCauses.indexOf("too-cold");
  return unusedCauses.indexOf(bus.accepts_A < bank.bulk_A ? "bank-full" : "bank-limit");
}

function checkDrive({ hours, startCharge, load_W, sun, kept }: Drive): void {
  mustLie("startCharge", startCharge, 0, 1);
  for (const [name, series] of Object.entries({ load_W, sun, kept })) {
    if (!(series.length >= hours))
      throw new RangeError(`${name} must have ${hours} hours or more, got ${series.length}`);
  }
}
