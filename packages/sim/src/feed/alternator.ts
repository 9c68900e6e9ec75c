import { alongLine } from "../numeric/line.ts";
import { mustLie } from "../numeric/must.ts";

/** Output of an alternator by its own speed, as a share of its rating. */
export const alternatorCurve = {
  source: "service manual for a 50 A class alternator, at 13.5 V; pulley ratio 1.78",
  standing: "published, one machine; others differ, and later ones give more at idle",
  pulley: 1.78,
  rated_A: 50,
  /** [rpm of the alternator, amps of the 50 A machine]; nothing below 1000 rpm is from memory */
  hot_A: [
    [1000, 0],
    [1300, 16],
    [2500, 41],
    [5000, 48],
  ],
  cold_A: [
    [1000, 0],
    [1300, 24],
    [2500, 50],
  ],
} as const;

/** Regulator volts against temperature. Source: the same service manual, 14.4 ± 0.3 V at 20 °C, -0.1 V for 10 K. */
export const regulatorVolts_V = (temp_C: number): number => 14.4 - 0.01 * (temp_C - 20);

/** What a variable-voltage alternator stands at. */
export const variableAlternator = {
  normal_V: [13.8, 14.4],
  reduced_V: 12.5,
  highest_V: 15,
  source: 'public off-road technical article: "typical 12.5 V, but below that too"; the 15 V from memory',
  standing: "published",
} as const;

/** Efficiency of DC-DC chargers at a fixed power. Source: public technical page (published). */
export const converterEfficiency = { low: 0.85, high: 0.9 } as const;

/** What a vehicle takes for itself on the road: engine, lamps, fans. Common practice, no source. [A] */
export const vehicleOwn_A = 25;

/** Engine speeds for the two ends of a drive. Common practice, no source. [rpm] */
export const engineSpeeds_rpm = { idle: 730, road: 2000 } as const;

/** Output of an alternator, by the curve. @param rated_A 10 to 600 @param alternator_rpm 0 to 20000 @returns [A] */
export function alternatorOutput_A(rated_A: number, alternator_rpm: number, heat: "hot" | "cold" = "hot"): number {
  mustLie("alternator rated_A", rated_A, 10, 600);
  mustLie("alternator_rpm", alternator_rpm, 0, 20000);
  const curve = heat === "hot" ? alternatorCurve.hot_A : alternatorCurve.cold_A;
  return (rated_A / alternatorCurve.rated_A) * alongLine(curve, alternator_rpm);
}

/** What is left for charging at an engine speed, hot, never below 0 [A]. */
export function alternatorSpare_A(rated_A: number, vehicle_A: number, engine_rpm: number): number {
  mustLie("vehicle_A", vehicle_A, 0, 600);
  return Math.max(0, alternatorOutput_A(rated_A, engine_rpm * alternatorCurve.pulley) - vehicle_A);
}
