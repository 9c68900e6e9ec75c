import { resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";

/** What a bank holds [Ah]. */
export interface Held {
  /** charge available at the terminals */
  q1: number;
  /** all charge */
  q: number;
}

/**
 * When, inside a step that leaves it down, a bank discharged at a constant current comes to its cut-off: half a step if that
 * leaves it up, then a quarter, an eighth, on the exact two-tank solution; and what is then left, of an hour 14 s, as if
 * it were straight. Leaves `held` as it stands at that moment.
 * @param held at the start of the step
 * @returns hours into the step, 0 to its length
 */
export function dropMoment_h(bank: BankModel, held: Held, drawn_A: number): number {
  const { tank, halves } = bank;
  let { q1, q } = held;
  let up = above(bank, q1, q, drawn_A);
  if (!(up > 0)) return 0;
  let down1 = availableAfter_Ah(tank, q1, q, drawn_A);
  let down = above(bank, down1, q - drawn_A * tank.step_h, drawn_A);
  let lasted_h = 0;
  let left_h = tank.step_h;
  for (let i = 0; i < halves.length; i++) {
    const half = halves[i]!;
    left_h = half.step_h;
    const next1 = availableAfter_Ah(half, q1, q, drawn_A);
    const next = q - drawn_A * left_h;
    const height = above(bank, next1, next, drawn_A);
    if (height > 0) {
      q1 = next1;
      q = next;
      up = height;
      lasted_h += left_h;
    } else {
      down1 = next1;
      down = height;
    }
  }
  const share = up / (up - down);
  held.q1 = q1 + share * (down1 - q1);
  held.q = q - drawn_A * share * left_h;
  return lasted_h + share * left_h;
}

/** Over 0 while loads stay up: the least of what is available [Ah] and of what the volts under load are above the cut-off. */
function above(bank: BankModel, q1: number, q: number, drawn_A: number): number {
  const over_V = bank.volts.at(q1) - drawn_A * resistanceAt_Ohm(bank, q * bank.perFull) - bank.cutOff_V;
  return q1 < over_V ? q1 : over_V;
}

/** Lets the tanks stand without a current: they level out. */
export function rest({ k_per_h, c }: BankModel, held: Held, hours: number): void {
  const e = Math.exp(-k_per_h * hours);
  held.q1 = held.q1 * e + held.q * c * (1 - e);
}
