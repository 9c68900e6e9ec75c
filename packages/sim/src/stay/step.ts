/** What one step gave: means over the step. */
export interface Step {
  /** the watts are wanted too, and not just the bank's amps */
  watts: boolean;
  /** charge stored, losses taken off [A] */
  stored_A: number;
  /** charge drawn [A] */
  drawn_A: number;
  served_W: number;
  element_W: number;
  sunAvailable_W: number;
  sunUsed_W: number;
  /** kept back by the charger's rating [W] */
  sunClipped_W: number;
  feed_W: number;
  mains_W: number;
  bankIn_W: number;
  bankOut_W: number;
  /** what goes into the bank and, at its rested volts, is not in it after [W] */
  chargeLoss_W: number;
}

export const newStep = (): Step => ({
  watts: true,
  stored_A: 0.5,
  drawn_A: 0.5,
  served_W: 0.5,
  element_W: 0.5,
  sunAvailable_W: 0.5,
  sunUsed_W: 0.5,
  sunClipped_W: 0.5,
  feed_W: 0.5,
  mains_W: 0.5,
  bankIn_W: 0.5,
  bankOut_W: 0.5,
  chargeLoss_W: 0.5,
});

export function clearStep(step: Step): void {
  step.stored_A = step.drawn_A = 0;
  if (!step.watts) return;
  step.served_W = step.element_W = 0;
  step.sunAvailable_W = step.sunUsed_W = step.sunClipped_W = step.feed_W = step.mains_W = 0;
  step.bankIn_W = step.bankOut_W = step.chargeLoss_W = 0;
}
