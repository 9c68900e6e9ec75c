import { alongLine } from "../numeric/line.ts";
import { awgArea_mm2 } from "./awg.ts";

/** What a 50 A two-pole genderless connector carries for good in 75 °C ambient, by the wire crimped into it. */
export const hotConnector = {
  nominal_A: 50,
  ambient_C: 75,
  source: "connector maker's derating chart note, greatest continuous amps",
  standing: "published",
  /** thinnest wire first */
  rows: [
    [12, 31],
    [10, 37],
    [8, 46],
    [6, 58],
  ] as readonly (readonly [gauge: number, amps: number])[],
} as const;

/** Amps that the 50 A connector carries hot on a wire of this much copper, held at the ends of the chart. [A] */
export function hotConnector_A(area_mm2: number): number {
  return alongLine(
    hotConnector.rows.map(([gauge, amps]) => [awgArea_mm2(gauge), amps] as const),
    area_mm2,
  );
}
