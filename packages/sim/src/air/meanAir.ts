import { DAYS_BEFORE, MONTH_DAYS } from "../numeric/calendar.ts";
import { mustBeWhole } from "../numeric/must.ts";
import type { Climate } from "../study.ts";
import { hourlyAir_C } from "./hourlyAir.ts";

/**
 * Mean outside air temperature of a month: the mean of `hourlyAir_C` over its every hour. It lies a little below the middle
 * of the extremes, since nights are longer cool than afternoons are warm.
 *
 * @param month 1 to 12
 * @returns [°C]
 * @throws RangeError where an argument or the climate is out of range
 */
export function meanAir_C(climate: Climate, month: number): number {
  mustBeWhole("month", month, 1, 12);
  const hours = hourlyAir_C(climate, (DAYS_BEFORE[month - 1] ?? 0) + 1, MONTH_DAYS[month - 1] ?? 0);
  return hours.reduce((sum, air_C) => sum + air_C, 0) / hours.length;
}
