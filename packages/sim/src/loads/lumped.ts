/**
 * A lumped body after some hours beside surroundings that stay as they are: target + (start − target) e^(−rate × hours).
 * Source: lumped-capacity solution, any heat-transfer text.
 *
 * @param rate_per_h conductance over heat capacity, 0 or more [1/h]
 */
export function relaxed_C(start_C: number, target_C: number, rate_per_h: number, hours: number): number {
  return target_C + (start_C - target_C) * Math.exp(-rate_per_h * hours);
}

/**
 * When a lumped body passes a level, on its way to a target beyond it [h]; Infinity where it never does. 0 where it
 * stands there already.
 */
export function hoursToPass(start_C: number, level_C: number, target_C: number, rate_per_h: number): number {
  if (start_C === level_C) return 0;
  const left = (target_C - start_C) / (target_C - level_C);
  return left > 1 && rate_per_h > 0 ? Math.log(left) / rate_per_h : Infinity;
}

/** Heat capacity of a stocked cabinet [Wh/K], from its volume. */
export function cabinetCapacity_Wh_K(volume_L: number): number {
  return (volume_L * STOCK_kg_per_L * STOCK_kJ_kgK) / 3.6;
}

/** Chosen: a fridge packed for a trip, walls and shelves counted as food. */
const STOCK_kg_per_L = 0.2;
/** Food at 85 % water by the usual rule 4.19 p + 0.84 (1 − p). */
const STOCK_kJ_kgK = 3.7;
