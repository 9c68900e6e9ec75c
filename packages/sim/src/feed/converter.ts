import type { ConverterPart, FeedCircuit } from "./circuit.ts";

/** What holds a converter's output, and the number that does. */
export interface ConverterLimit {
  /** into the bank and the loads on it */
  readonly output_A: number;
  /** drawn through the path */
  readonly input_A: number;
  /** at the converter's input terminals */
  readonly input_V: number;
  readonly limitedBy: "converter" | "fuse" | "plug" | "source" | "cable";
  readonly limit: { readonly name: string; readonly value: number; readonly unit: "A" | "V" };
}

/**
 * Most output amps of a converter behind its path. The power reaching it, I (V - I R), rises with I up to V / 2R, so the
 * most it can pass on is at the least of the amp limits, the amps that pull its input down to its minimum, and V / 2R:
 * where V² < 4 R P has no solution it backs off to what the path allows. Closed form, no allocation, never NaN.
 * Source: Kirchhoff; constant-power load on a resistance.
 *
 * @param source_V a share's volts from the circuit [V]
 * @param bus_V at the converter's output, the bank's charging volts [V]
 * @returns 0 to the rating [A]; 0 for volts that are not positive numbers
 */
export function converterMost_A(circuit: FeedCircuit, source_V: number, bus_V: number): number {
  if (circuit.converter === null || !(bus_V > 0)) return 0;
  const output_A = converterHeld_W(circuit, source_V) / bus_V;
  return output_A < circuit.converter.rated_A ? output_A : circuit.converter.rated_A;
}

/**
 * The most that a converter gives for what its path and its source let through, its own rating left out [W].
 * @param source_V a share's volts from the circuit [V]
 * @returns 0 or more; 0 for a relay, and below the converter's least input volts
 */
export function converterHeld_W(
  { converter, limit, resistance_Ohm }: Pick<FeedCircuit, "converter" | "limit" | "resistance_Ohm">,
  source_V: number,
): number {
  if (converter === null || !(source_V >= converter.minInput_V)) return 0;
  const input_A = Math.min(limit.limit_A, pathMost_A(converter, resistance_Ohm, source_V));
  return converter.efficiency * input_A * (source_V - input_A * resistance_Ohm);
}

/** Input amps at which the path pulls the input to its minimum, or to half the source, whichever comes first. */
function pathMost_A({ minInput_V }: ConverterPart, resistance_Ohm: number, source_V: number): number {
  if (resistance_Ohm === 0) return Infinity;
  return Math.min(source_V - minInput_V, source_V / 2) / resistance_Ohm;
}

/**
 * Input amps for a wanted output: the lower root of R I² - V I + P = 0, in the form that also holds at R = 0.
 * Null where no current carries that power (V² < 4 R P).
 */
export function converterInput_A(
  output_W: number,
  efficiency: number,
  source_V: number,
  resistance_Ohm: number,
): number | null {
  const input_W = output_W / efficiency;
  const root = source_V ** 2 - 4 * resistance_Ohm * input_W;
  return root >= 0 ? (2 * input_W) / (source_V + Math.sqrt(root)) : null;
}

/** As {@link converterMost_A}, with the amps and volts at the input and what holds it there. For reports. */
export function converterLimit(circuit: FeedCircuit, source_V: number, bus_V: number): ConverterLimit {
  const { converter, resistance_Ohm } = circuit;
  if (converter === null) throw new RangeError("converterLimit needs a converter feed, got a relay");
  const output_A = converterMost_A(circuit, source_V, bus_V);
  const input_A =
    output_A < converter.rated_A
      ? inputAtLimit_A(circuit, converter, source_V, bus_V)
      : (converterInput_A(output_A * bus_V, converter.efficiency, source_V, resistance_Ohm) ?? 0);
  return {
    output_A,
    input_A,
    input_V: source_V - input_A * resistance_Ohm,
    ...heldBy(circuit, converter, source_V, output_A),
  };
}

function inputAtLimit_A(circuit: FeedCircuit, converter: ConverterPart, source_V: number, bus_V: number): number {
  if (!(source_V >= converter.minInput_V) || !(bus_V > 0)) return 0;
  return Math.min(circuit.limit.limit_A, pathMost_A(converter, circuit.resistance_Ohm, source_V));
}

function heldBy(
  { limit, resistance_Ohm }: FeedCircuit,
  converter: ConverterPart,
  source_V: number,
  output_A: number,
): Pick<ConverterLimit, "limitedBy" | "limit"> {
  if (output_A >= converter.rated_A) {
    return { limitedBy: "converter", limit: { name: "the converter's rating", value: converter.rated_A, unit: "A" } };
  }
  if (!(source_V >= converter.minInput_V)) {
    return { limitedBy: "source", limit: { name: "the source's volts", value: source_V, unit: "V" } };
  }
  if (limit.limit_A <= pathMost_A(converter, resistance_Ohm, source_V)) {
    return { limitedBy: limit.by, limit: { name: limit.name, value: limit.limit_A, unit: "A" } };
  }
  const value = Math.max(converter.minInput_V, source_V / 2);
  return { limitedBy: "cable", limit: { name: "volts left at the converter", value, unit: "V" } };
}
