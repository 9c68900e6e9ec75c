import { mustLie } from "../numeric/must.ts";

/**
 * American wire gauge by its geometric definition: 39 equal ratios from 36 AWG (0.127 mm) to 4/0 (11.684 mm).
 * Source: ASTM B258. Gauges above 0 are negative here: 2/0 is -1, 4/0 is -3.
 */
const solidDiameter_mm = (gauge: number): number => 0.127 * 92 ** ((36 - gauge) / 39);

/** Copper's resistivity at 20 °C. Source: IEC 60028 (100 % IACS). [ohm mm²/km] */
const COPPER = 17.241;

/** The sizes sold for vehicles and boats, thinnest first. Odd gauges thinner than 1 are hardly stocked. */
const stocked = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3] as const;

/** A gauge as it is written: "8 AWG", "2/0 AWG". */
export const awgName = (gauge: number): string => (gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`);

/** Copper in a gauge [mm²]; gauge 40 to -3 (4/0). */
export function awgArea_mm2(gauge: number): number {
  return (Math.PI / 4) * awgDiameter_mm(gauge) ** 2;
}

/** Diameter of a gauge's solid wire [mm]; gauge 40 to -3 (4/0). */
export function awgDiameter_mm(gauge: number): number {
  mustLie("gauge", gauge, -3, 40);
  return solidDiameter_mm(gauge);
}

/** Resistance of one solid conductor of a gauge at 20 °C [ohm/km]. */
export const awgPerKm_Ohm = (gauge: number): number => COPPER / awgArea_mm2(gauge);

/** The thinnest stocked gauge with at least this much copper; null above 4/0. */
export function awgAtLeast(area_mm2: number): number | null {
  return stocked.find((gauge) => awgArea_mm2(gauge) >= area_mm2) ?? null;
}
