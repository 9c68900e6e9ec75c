import { atShare, resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import type { Tanks } from "../bank/twoTanks.ts";

/**
 * When, inside a step, a bank discharged at a constant current falls to its cut-off: half a step if that leaves it up,
 * then a quarter, an eighth, on the exact two-tank solution. Leaves `tanks` as they stand at that moment.
 * @returns hours into the step, 0 to its length
 */
export function dropMoment_h(bank: BankModel, tanks: Tanks, drawn_A: number): number {
  let lasted_h = 0;
  for (const { step_h, e, gain, perAmp_h } of bank.halves) {
    const q = tanks.q1 + tanks.q2;
    const q1 = tanks.q1 * e + q * gain - drawn_A * perAmp_h;
    const left = q - drawn_A * step_h;
    if (isDown(bank, q1, left, drawn_A)) continue;
    tanks.q1 = q1;
    tanks.q2 = left - q1;
    lasted_h += step_h;
  }
  return lasted_h;
}

/** Whether loads drop at this charge and current: the available tank empty, or the volts under load below the cut-off. */
export function isDown(bank: BankModel, q1: number, q: number, drawn_A: number): boolean {
  if (q1 <= 0) return true;
  const rested_V = atShare(bank.volts, q1 / (bank.c * bank.full_Ah));
  return rested_V - drawn_A * resistanceAt_Ohm(bank, q / bank.full_Ah) < bank.cutOff_V;
}

/** Lets the tanks stand without a current: they level out. */
export function rest(bank: BankModel, tanks: Tanks, hours: number): void {
  const q = tanks.q1 + tanks.q2;
  const e = Math.exp(-bank.k_per_h * hours);
  tanks.q1 = tanks.q1 * e + q * bank.c * (1 - e);
  tanks.q2 = q - tanks.q1;
}
