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
    const hour = Math.min(inside_C.length - 1, Math.floor(found.drop_h));
    return [foodHours(load, setupPlan.plan.bay_C, found.drop_h, inside_C[hour]!, return_h)];
  });
  const soonest = (hours: FoodHours) => hours.hoursFromCutOffTo5C ?? Infinity;
  return each.sort((a, b) => soonest(a) - soonest(b))[0] ?? nothing;
}
