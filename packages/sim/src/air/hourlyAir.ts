import { wrapDay } from "../numeric/calendar.ts";
import { onMonthLine } from "../numeric/monthLine.ts";
import { mustAllLie, mustHold, mustBeWhole } from "../numeric/must.ts";
import { solarLead_h } from "../numeric/solarClock.ts";
import type { Climate } from "../study.ts";
import { dayShape } from "./dayShape.ts";

/**
 * Outside air temperature, hour by hour, from monthly mean daily maxima and minima: the extremes run in straight lines
 * between mid-months, and each hour takes its place between them at its middle, by solar time.
 * Source: Erbs, Klein & Beckman (1983) for the day's shape; stretched to reach both extremes.
 *
 * @param firstDayOfYear 1 to 365 [day]
 * @param days how many; past 31 December the year begins again [day]
 * @returns `days` × 24 values by calendar hour of standard time from midnight of the first day [°C]
 * @throws RangeError where an argument or the climate is out of range
 */
export function hourlyAir_C(climate: Climate, firstDayOfYear: number, days: number): Float64Array {
  mustBeWhole("firstDayOfYear", firstDayOfYear, 1, 365);
  mustBeWhole("days", days, 0, 100_000);
  requireExtremes(climate);
  const air_C = new Float64Array(days * 24);
  for (let day = 0; day < days; day++) {
    const dayOfYear = wrapDay(firstDayOfYear + day);
    const low_C = onMonthLine(climate.tmin_C, dayOfYear);
    const range_C = onMonthLine(climate.tmax_C, dayOfYear) - low_C;
    const lead_h = solarLead_h(climate, dayOfYear);
    for (let h = 0; h < 24; h++) air_C[day * 24 + h] = low_C + range_C * dayShape(h + 0.5 + lead_h);
  }
  return air_C;
}

function requireExtremes({ tmax_C, tmin_C }: Climate): void {
  for (const [name, months] of [
    ["tmax_C", tmax_C],
    ["tmin_C", tmin_C],
  ] as const) {
    mustHold(name, months, 12);
    mustAllLie(name, months, -90, 70);
  }
  tmax_C.forEach((max_C, m) => {
    const min_C = tmin_C[m] ?? NaN;
    if (!(max_C >= min_C))
      throw new RangeError(`tmax_C[${m}] must be at least tmin_C[${m}], got ${max_C} and ${min_C}`);
  });
}
