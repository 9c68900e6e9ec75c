import { atShare, resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { stepTanks, tankStep, type Tanks } from "../bank/twoTanks.ts";

/** Halvings of a step of an hour: to well under a second. */
const halvings = 30;

/**
 * When, inside a step, a bank discharged at a constant current falls to its cut-off: bisection on the exact two-tank
 * solution.
 * @returns hours into the step, 0 to its length; its length where it does not fall
 */
export function dropMoment_h(bank: BankModel, tanks: Tanks, drawn_A: number): number {
  let low_h = 0;
  let high_h = bank.tank.step_h;
  for (let i = 0; i < halvings; i++) {
    const middle_h = (low_h + high_h) / 2;
    if (isDown(bank, tanksAfter(bank, tanks, drawn_A, middle_h), drawn_A)) high_h = middle_h;
    else low_h = middle_h;
  }
  return high_h;
}

/** Whether loads drop at this charge and current: the available tank empty, or the volts under load below the cut-off. */
export function isDown(bank: BankModel, { q1, q2 }: Tanks, drawn_A: number): boolean {
  if (q1 <= 0) return true;
  const rested_V = atShare(bank.volts, q1 / (bank.c * bank.full_Ah));
  return rested_V - drawn_A * resistanceAt_Ohm(bank, (q1 + q2) / bank.full_Ah) < bank.cutOff_V;
}

/** The tanks after part of a step. */
export const tanksAfter = (bank: BankModel, tanks: Tanks, drawn_A: number, hours: number): Tanks =>
  hours > 0 ? stepTanks(tanks, drawn_A, tankStep(bank.c, bank.k_per_h, hours)) : tanks;
