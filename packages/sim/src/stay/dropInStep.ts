import { resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { availableAfter_Ah, type TankStep } from "../bank/twoTanks.ts";
import type { RunState } from "./runState.ts";

/** A step in which loads drop. Numbers are handed over in place: one that crosses a call or a return would be boxed. */
export interface DropStep {
  /** hours into the step, 0 to its length */
  lasted_h: number;
  /** at the end of the step: charge available at the terminals, and all that is held [Ah] */
  q1: number;
  q: number;
}

/** A step of no length. */
const atOnce: TankStep = { step_h: 0, e: 1, gain: 0, perAmp_h: 0 };

/**
 * When, inside a step that leaves it down, a bank discharged at a constant current comes to its cut-off: half a step if that
 * leaves it up, then a quarter, an eighth, on the exact two-tank solution; and what is then left, of an hour two minutes, as
 * if it were straight. For the rest of the step the tanks stand without a current, and level out.
 * @param state at the start of the step, with the net current
 */
export function dropInStep(bank: BankModel, state: RunState, drop: DropStep): void {
  const { halves, volts, cutOff_V, perFull } = bank;
  const { net_A } = state;
  const last = halves.length - 1;
  let { q1, q } = state;
  let up = 0;
  let down1 = 0;
  let down = 0;
  let lasted_h = 0;
  let fell = false;
  // All looks are in one place: in a function of its own, each would cost boxes for the numbers that go in and come out.
  for (let i = 0; i <= last + 1; i++) {
    const ends = i > last; // where all halves were down, or all up, with a look at the start or the end of the step
    if (ends && fell && lasted_h > 0) break;
    const part = ends && lasted_h === 0 ? atOnce : halves[ends ? last : i]!;
    const next1 = availableAfter_Ah(part, q1, q, net_A);
    const next = q - net_A * part.step_h;
    // Over 0 while loads stay up: the least of what is available [Ah] and of what the volts under load are above cut-off.
    const over_V = volts.at(next1) - net_A * resistanceAt_Ohm(bank, next * perFull) - cutOff_V;
    const height = next1 < over_V ? next1 : over_V;
    if (ends && lasted_h === 0) up = height > 0 ? height : 0;
    else if (height > 0 && !ends) {
      q1 = next1;
      q = next;
      up = height;
      lasted_h += part.step_h;
    } else {
      down1 = next1;
      down = height < 0 ? height : 0;
      fell = true;
    }
  }
  const share = up > 0 ? up / (up - down) : 0;
  const left_h = share * halves[last]!.step_h;
  drop.lasted_h = lasted_h + left_h;
  drop.q = q - net_A * left_h;
  const then_Ah = q1 + share * (down1 - q1);
  const e = Math.exp(-bank.k_per_h * (bank.step_h - drop.lasted_h));
  drop.q1 = then_Ah * e + drop.q * bank.c * (1 - e);
}
