import type { CompressorFridge } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { calibrateFridge } from "./calibrateFridge.ts";
import { hoursToPass, relaxed_C } from "./lumped.ts";
import { requireTemperatures } from "./require.ts";

/** How fast the food warms once the power is off. */
export interface WarmingHours {
  /** from the cut-off, if it stayed off [h]; null: not within the hours given */
  readonly hoursFromCutOffTo5C: number | null;
  readonly hoursFromCutOffTo8C: number | null;
  /** from passing 5 °C until loads return [h]; null where they do not, or where the fridge is set to 5 °C or more */
  readonly hoursAbove5C: number | null;
}

/**
 * How a compressor fridge's cabinet warms after the loads drop: a lumped body drifting towards its bay, exactly within
 * each hour, with the door kept shut. Food safety's two-hour/four-hour rule counts time above 5 °C (from memory; the local
 * authority's rule is the one to follow). A cabinet that is at or above a line already has passed it: 0 hours.
 *
 * @param bay_C air around the fridge, one value an hour from arrival [°C]
 * @param cutOff_h hours from arrival at which loads drop, 0 to the length of `bay_C`
 * @param startInside_C cabinet at that moment [°C]
 * @param loadsReturn_h hours from arrival at which loads return; null: not at all
 * @throws RangeError naming the field that is out of range
 */
export function foodHours(
  fridge: CompressorFridge,
  bay_C: Float64Array,
  cutOff_h: number,
  startInside_C: number,
  loadsReturn_h: number | null,
): WarmingHours {
  const { rate_per_h } = calibrateFridge(fridge);
  requireTemperatures(`${fridge.id}: bay_C`, bay_C);
  mustLie("cutOff_h", cutOff_h, 0, bay_C.length);
  mustLie("startInside_C", startInside_C, -90, 120);
  if (loadsReturn_h !== null && !(loadsReturn_h >= cutOff_h))
    throw new RangeError(`loadsReturn_h must not be before cutOff_h ${cutOff_h}, got ${loadsReturn_h}`);
  const to5_h = hoursToLevel(5, rate_per_h, bay_C, cutOff_h, startInside_C);
  const to8_h = hoursToLevel(8, rate_per_h, bay_C, cutOff_h, startInside_C);
  const above_h = loadsReturn_h === null || fridge.inside_C >= 5 ? null : aboveUntil(loadsReturn_h - cutOff_h, to5_h);
  return { hoursFromCutOffTo5C: to5_h, hoursFromCutOffTo8C: to8_h, hoursAbove5C: above_h };
}

function aboveUntil(off_h: number, passed_h: number | null): number {
  return passed_h === null ? 0 : Math.max(0, off_h - passed_h);
}

/** Hours until a cabinet left to drift first reaches a level; null where it does not within the series. */
function hoursToLevel(
  level_C: number,
  rate_per_h: number,
  bay_C: Float64Array,
  from_h: number,
  start_C: number,
): number | null {
  if (start_C >= level_C) return 0;
  let inside_C = start_C;
  for (let hour = Math.floor(from_h), now_h = from_h; hour < bay_C.length; hour++, now_h = hour) {
    const left_h = hour + 1 - now_h;
    const pass_h = hoursToPass(inside_C, level_C, bay_C[hour]!, rate_per_h);
    if (pass_h <= left_h) return now_h + pass_h - from_h;
    inside_C = relaxed_C(inside_C, bay_C[hour]!, rate_per_h, left_h);
  }
  return null;
}
