const KELVIN = 273.15;

/**
 * Numbers of a small dc compressor: Carnot fraction and the two temperature steps are chosen together, to fit a published
 * chamber test of 35 to 50 L portables (median 2.0 A at a mean of 37 °C).
 */
export const compressorNumbers = {
  carnotFraction: 0.3,
  /** evaporator under the cabinet [K] */
  evaporatorStep_K: 14,
  /** condenser over the bay [K] */
  condenserStep_K: 12,
  /** electronics and thermostat, always [W]; chosen */
  controls_W: 1,
  /** door openings, as if the bay were so much warmer [K]; chosen */
  doors_K: 2,
  /** what a freezer compartment is held at [°C] */
  freezer_C: -18,
  /** least lift the model is trusted to [K]; below it the efficiency is held */
  leastLift_K: 10,
} as const;

/** Carnot's coefficient of performance for cooling: T_ev/(T_co − T_ev), absolute. */
export function carnotCop(evaporator_C: number, condenser_C: number): number {
  return (evaporator_C + KELVIN) / (condenser_C - evaporator_C);
}

/** Heat moved by a watt of compressor, for a cabinet and a bay temperature: a fixed fraction of Carnot's. */
export function compressorCop(cabinet_C: number, bay_C: number): number {
  const { carnotFraction, evaporatorStep_K, condenserStep_K, leastLift_K } = compressorNumbers;
  const evaporator_C = cabinet_C - evaporatorStep_K;
  return carnotFraction * carnotCop(evaporator_C, Math.max(bay_C + condenserStep_K, evaporator_C + leastLift_K));
}
