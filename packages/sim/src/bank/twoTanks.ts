/**
 * Two tanks of charge: one available at the terminals, one bound, with a flow between them.
 * Source: Manwell & McGowan 1993, Solar Energy 50(5), 399–405 (kinetic battery model).
 */
export interface Tanks {
  /** available [Ah] */
  q1: number;
  /** bound [Ah] */
  q2: number;
}

/** What a step of one length does to the tanks: exponentials once for a bank, not once a step. */
export interface TankStep {
  readonly step_h: number;
  /** e^(−kΔ) */
  readonly e: number;
  /** share of all charge that moves into the available tank, c(1 − e) */
  readonly gain: number;
  /** charge the available tank loses for each ampere [Ah/A] */
  readonly perAmp_h: number;
}

/** @throws RangeError outside c 0 to 1, k 0 to 100 /h, step 0 to 24 h */
export function tankStep(c: number, k_per_h: number, step_h: number): TankStep {
  const kt = k_per_h * step_h;
  const e = Math.exp(-kt);
  return { step_h, e, gain: c * (1 - e), perAmp_h: (1 - e + c * (kt - 1 + e)) / k_per_h };
}

/**
 * Charge available after a step at a constant current [Ah].
 * @param q all charge at its start [Ah]
 * @param current_A positive discharges
 */
export const availableAfter_Ah = (step: TankStep, q1: number, q: number, current_A: number): number =>
  q1 * step.e + q * step.gain - current_A * step.perAmp_h;

/**
 * The tanks after a constant current.
 * @param current_A positive discharges
 */
export function stepTanks(tanks: Tanks, current_A: number, step: TankStep): Tanks {
  const q = tanks.q1 + tanks.q2;
  const q1 = availableAfter_Ah(step, tanks.q1, q, current_A);
  return { q1, q2: q - current_A * step.step_h - q1 };
}

/** The most amps that the step can draw before the available tank is empty. */
export function mostDischarge_A(tanks: Tanks, step: TankStep): number {
  return availableAfter_Ah(step, tanks.q1, tanks.q1 + tanks.q2, 0) / step.perAmp_h;
}

/**
 * Charge given at a constant current, from full to an empty available tank, over so many hours: capacity by rate.
 * @returns [Ah], in the unit of `full_Ah`
 */
export function capacityOverHours_Ah(full_Ah: number, c: number, k_per_h: number, hours: number): number {
  const kt = k_per_h * hours;
  const e = Math.exp(-kt);
  return (full_Ah * k_per_h * c * hours) / (1 - e + c * (kt - 1 + e));
}
