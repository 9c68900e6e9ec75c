import { drawClearness } from "../sun/index.ts";
import type { StayPlan } from "./stayPlan.ts";

/**
 * The skies that every setup and every candidate is held against: so many draws under one seed, or rows given from
 * outside (a measured record, another program), one a draw, clearness by day from the day of arrival.
 */
export type Skies =
  { readonly seed: number; readonly draws: number } | { readonly rows: readonly (readonly number[])[] };

/** How many skies there are. */
export const drawCount = (skies: Skies): number => ("rows" in skies ? skies.rows.length : skies.draws);

/** One sky of the ensemble, clearness by calendar day of the stay. @throws RangeError where a given row is too short */
export function skyOf(plan: StayPlan, skies: Skies, draw: number): Float64Array {
  if (!("rows" in skies)) return drawClearness(plan.meanClearness, plan.climate.dayToDay, skies.seed, draw);
  const row = skies.rows[draw] ?? [];
  if (!(row.length >= plan.days)) {
    throw new RangeError(`sky row ${draw + 1} must have a clearness for each of ${plan.days} days, got ${row.length}`);
  }
  return Float64Array.from(row.slice(0, plan.days), (clearness, day) => {
    if (!(clearness >= 0 && clearness <= 1)) {
      throw new RangeError(`sky row ${draw + 1}, day ${day + 1}: clearness must be 0 to 1, got ${clearness}`);
    }
    return clearness;
  });
}
