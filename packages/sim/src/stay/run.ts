import { hourOf, shownCharge } from "../bank/bankModel.ts";
import { mustLie } from "../numeric/must.ts";
import type { Drive, MixedHours } from "./drive.ts";
import { endStep } from "./endStep.ts";
import { inShape } from "./inShape.ts";
import type { Ledger } from "./ledger.ts";
import { oneStep } from "./oneStep.ts";
import { plainSteps } from "./plainSteps.ts";
import { rehearsals } from "./rehearse.ts";
import { roadHour } from "./roadHour.ts";
import { newRunState, type RunState } from "./runState.ts";

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

/** Nothing found yet: NaN where it has not happened. */
export const newFound = (): Found => ({ drop_h: NaN, reserve_h: NaN, return_h: NaN, lowest: 1, lowest_h: 0 });

/** When to end a run, and what to keep of it. */
export interface RunOptions {
  /** end at the first drop */
  readonly stopAtDrop?: boolean;
  /** filled with the charge held after each step, from the start [Ah]: hours × steps an hour + 1 values */
  readonly held_Ah?: Float64Array | null;
  readonly ledger?: Ledger | null;
}

/** Steps that are taken at once, at most: an engine that compiles while it runs takes up what it compiled at the next call. */
const stretch = 96;

const state: RunState = newRunState();

let rehearsed = false;

/**
 * The hourly recurrence: steps one bank through a stay. Plain steps are taken many at a time, the others one by one; with a
 * ledger, all are taken one by one.
 * @param found filled in and returned
 * @throws RangeError where startCharge is not 0 to 1 or a series is shorter than `hours`
 */
export function run(given: Drive, found: Found, options: RunOptions = {}): Found {
  if (!rehearsed) rehearse();
  checkDrive(given);
  const drive = inShape(given);
  const { bank } = drive;
  const { step_h } = bank;
  const { stopAtDrop = false, held_Ah = null, ledger = null } = options;
  const steps = drive.hours * bank.stepsAnHour;
  const single = ledger !== null;
  start(drive);
  if (held_Ah !== null) held_Ah[0] = state.q;
  while (state.steps < steps && !(stopAtDrop && state.drop_h >= 0)) {
    const until = Math.min(steps, state.steps + stretch);
    if (!single && settleNext(drive, until, held_Ah)) {
      endStep(bank, state, null);
      if (held_Ah !== null) held_Ah[state.steps] = state.q;
    } else if (single || state.steps < until) oneStep(drive, state, held_Ah, ledger);
  }
  found.drop_h = state.drop_h;
  found.reserve_h = state.reserve_h;
  found.return_h = state.return_h;
  found.lowest = shownCharge(bank, state.lowest_Ah);
  found.lowest_h = state.lowestStep * step_h;
  return found;
}

/** Goes through everything once, before it is compiled for less; see `rehearsals`. */
function rehearse(): void {
  rehearsed = true;
  for (const drive of rehearsals()) {
    run(drive, newFound(), { held_Ah: new Float64Array(drive.hours * drive.bank.stepsAnHour + 1) });
  }
}

/** Takes plain steps, and settles the one after them if there is a short way to. */
function settleNext(drive: Drive, until: number, held_Ah: Float64Array | null): boolean {
  const { bank, mixed } = drive;
  if (mixed === null) return plainSteps(drive, state, until, held_Ah);
  // One hour on the road is mostly followed by another.
  if (!onRoad(mixed, hourOf(bank, state.steps)) && plainSteps(drive, state, until, held_Ah)) return true;
  return state.steps < until && roadHour(drive, mixed, state);
}

/** Whether an hour is driven, and by that no plain one. */
function onRoad({ driving, steadyFeed_A }: MixedHours, h: number): boolean {
  return driving[h]! > 0 && !(driving[h]! >= 1 && steadyFeed_A >= 0);
}

function start({ bank, startCharge }: Drive): void {
  const held_Ah = startCharge * bank.full_Ah;
  state.steps = 0;
  state.on = true;
  state.q1 = held_Ah * bank.c;
  state.q = held_Ah;
  state.lowest_Ah = held_Ah;
  state.lowestStep = 0;
  state.drop_h = NaN;
  state.reserve_h = held_Ah <= bank.reserve_Ah ? 0 : NaN;
  state.return_h = NaN;
}

function checkDrive({ hours, startCharge, loads, sun, kept }: Drive): void {
  mustLie("startCharge", startCharge, 0, 1);
  mustLast("loads", loads.load_W, hours);
  mustLast("sun", sun, hours);
  mustLast("kept", kept, hours);
}

function mustLast(name: string, series: Float64Array, hours: number): void {
  if (!(series.length >= hours)) throw new RangeError(`${name} must have ${hours} hours or more, got ${series.length}`);
}
