import { foodHours } from "../loads/index.ts";
import type { Found, SetupPlan } from "../stay/index.ts";
import type { FoodHours } from "./types.ts";

const nothing: FoodHours = { hoursFromCutOffTo5C: null, hoursFromCutOffTo8C: null, hoursAbove5C: null };

/**
 * How fast the food warms after the average sky's cut-off, else the dark sky's: of the compressor fridge that passes 5 °C
 * first. All null where there is no such fridge or no cut-off.
 */
export function foodAfter(setupPlan: SetupPlan, average: Found, dark: Found): FoodHours {
  const found = average.drop_h >= 0 ? average : dark;
  if (!(found.drop_h >= 0)) return nothing;
  const return_h = found.return_h >= 0 ? found.return_h : null;
  const each = setupPlan.demands.flatMap(({ load, inside_C }) => {
    if (load.kind !== "compressor-fridge" || inside_C === null) return [];
    return [foodHours(load, setupPlan.plan.bay_C, found.drop_h, insideAt_C(inside_C, found.drop_h), return_h)];
  });
  const soonest = (hours: FoodHours) => hours.hoursFromCutOffTo5C ?? Infinity;
  return each.sort((a, b) => soonest(a) - soonest(b))[0] ?? nothing;
}

/** A powered cabinet at a moment, from its ends of hours: along the line between them, and before the first as at the first. */
export function insideAt_C(inside_C: Float64Array, moment_h: number): number {
  const hour = Math.min(inside_C.length - 1, Math.floor(moment_h));
  const after_C = inside_C[hour]!;
  const before_C = hour > 0 ? inside_C[hour - 1]! : after_C;
  return before_C + (after_C - before_C) * Math.min(1, moment_h - hour);
}
