import type { BankModel } from "./bankModel.ts";

/**
 * The most amps at the terminals that a bank takes, meant over one step, standing at its absorption volts: least of the
 * bulk limit and the taper, which is of charge stored. (First-order acceptance dq/dt = α(Q − q); constants by bench test.)
 * @param q_Ah charge held at the start of the step
 * @param charge share of full, half-way through the step if that is known: sets losses and lithium's last limit
 */
export const acceptance_A = (model: BankModel, q_Ah: number, charge: number = q_Ah * model.perFull): number =>
  acceptanceAtLoss_A(model, q_Ah, charge, model.efficiency.at(charge));

/** The same where the charge efficiency is already known. @param efficiency share stored at that charge, over 0 to 1 */
export function acceptanceAtLoss_A(model: BankModel, q_Ah: number, charge: number, efficiency: number): number {
  const missing_Ah = model.full_Ah - q_Ah;
  if (!(missing_Ah > 0)) return 0;
  const limit_A = limitAt_A(model, charge);
  const taper_A = (model.takenUp_per_h * missing_Ah) / efficiency;
  return taper_A < limit_A ? taper_A : limit_A;
}

/** What a step stores of the amps offered at the terminals, its losses taken off and no more than the bank takes [A]. */
export function stored_A(model: BankModel, q_Ah: number, charge: number, offered_A: number): number {
  const missing_Ah = model.full_Ah - q_Ah;
  if (!(missing_Ah > 0)) return 0;
  const limit_A = limitAt_A(model, charge);
  const into_A = (offered_A < limit_A ? offered_A : limit_A) * model.efficiency.at(charge);
  const taper_A = model.takenUp_per_h * missing_Ah;
  return taper_A < into_A ? taper_A : into_A;
}

/** The same as a first guess: losses, and lithium's last limit, left out. */
export function roughlyStored_A(model: BankModel, q_Ah: number, offered_A: number): number {
  const taper_A = model.takenUp_per_h * (model.full_Ah - q_Ah);
  const most_A = taper_A < model.bulk_A ? taper_A : model.bulk_A;
  return offered_A < most_A ? offered_A : most_A;
}

/** The bulk limit, and lithium's last limit; held at its end for a charge past full, which half a step's guess can come to. */
function limitAt_A({ bulk_A, endTaperFrom, endTaper_A }: BankModel, charge: number): number {
  return charge > endTaperFrom ? bulk_A - ((charge < 1 ? charge : 1) - endTaperFrom) * endTaper_A : bulk_A;
}

/** The same with the terminals held at `terminal_V`: below the absorption volts a lead-acid bank takes charge far slower. */
export function acceptanceAt_A(
  model: BankModel,
  q_Ah: number,
  terminal_V: number,
  charge: number = q_Ah * model.perFull,
): number {
  const weak_A = model.weakTakenUp_per_h.at(terminal_V) * Math.max(0, model.full_Ah - q_Ah);
  return Math.min(acceptance_A(model, q_Ah, charge), weak_A / model.efficiency.at(charge));
}
