import { class2Plain, class5Plain, class5Tinned, COPPER_PER_K, type ConductorTable } from "./conductors.ts";
import { mustLie } from "../numeric/must.ts";

/** A length of twin cable. */
export interface Cable {
  /** one way; the current goes there and back [m], 0 to 200 */
  readonly length_m: number;
  /** copper of one conductor [mm²], 0.1 to 1000 */
  readonly area_mm2: number;
  /** IEC 60228: 5 flexible, 2 stranded */
  readonly conductorClass: 2 | 5;
  /** of the conductor [°C], -40 to 150 */
  readonly temp_C: number;
  /** class 5 only; plain copper unless said */
  readonly tinned?: boolean | undefined;
}

/**
 * Resistance of a cable, there and back.
 * Source: IEC 60228 maximum resistance at 20 °C, +0.393 %/K.
 * @returns [ohm]
 * @throws RangeError for a quantity outside the ranges of {@link Cable}
 */
export function cableResistance_Ohm(cable: Cable): number {
  const { length_m, area_mm2, temp_C } = cable;
  mustLie("length_m", length_m, 0, 200);
  return ((2 * length_m) / 1000) * perKm_Ohm(tableFor(cable), area_mm2) * copperFactor(temp_C);
}

/** The resistance table that a cable answers to. */
export function tableFor({ conductorClass, tinned }: Pick<Cable, "conductorClass" | "tinned">): ConductorTable {
  if (![2, 5].includes(conductorClass)) {
    throw new RangeError(`conductorClass must be 2 (stranded) or 5 (flexible), got ${conductorClass}`);
  }
  if (conductorClass === 2) return class2Plain;
  return tinned ? class5Tinned : class5Plain;
}

/** What copper's 20 °C resistance is multiplied by at a temperature [°C, -40 to 150]. */
export function copperFactor(temp_C: number): number {
  mustLie("temp_C", temp_C, -40, 150);
  return 1 + COPPER_PER_K * (temp_C - 20);
}

/**
 * Resistance of one conductor at 20 °C. Between rows the product of resistance and area is interpolated (it is nearly
 * constant, being copper's resistivity and the lay of the strands); beyond the table the last product is held.
 * @param area_mm2 0.1 to 1000 mm²
 * @returns [ohm/km]
 */
export function perKm_Ohm(table: ConductorTable, area_mm2: number): number {
  mustLie("area_mm2", area_mm2, 0.1, 1000);
  const { rows } = table;
  const product = (i: number) => rows[i]!.area_mm2 * rows[i]!.perKm_Ohm;
  const upper = rows.findIndex((row) => row.area_mm2 >= area_mm2);
  if (upper <= 0) return product(upper < 0 ? rows.length - 1 : 0) / area_mm2;
  const from = rows[upper - 1]!.area_mm2;
  const along = (area_mm2 - from) / (rows[upper]!.area_mm2 - from);
  return (product(upper - 1) + along * (product(upper) - product(upper - 1))) / area_mm2;
}
