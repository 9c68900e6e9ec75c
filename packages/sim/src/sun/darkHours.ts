import { seriesDay, solarLead_h } from "../numeric/solarClock.ts";
import type { Study } from "../study.ts";
import { dayOfYear } from "./dayOfYear.ts";
import { declination_deg } from "./declination.ts";
import { sunsetHourAngle_deg } from "./sunsetHourAngle.ts";

/**
 * Clock hours of sunset and sunrise on the day of arrival: of the sun's middle, on a level horizon.
 *
 * @returns each 0 to below 24, alike in polar night; null where the sun does not set [h]
 */
export function darkHours({ climate, trip }: Pick<Study, "climate" | "trip">): { from_h: number; to_h: number } | null {
  const day = dayOfYear(trip.month, trip.day);
  const half_h = sunsetHourAngle_deg(climate.latitude_deg, declination_deg(seriesDay(day))) / 15;
  if (half_h >= 12) return null;
  const noon_h = 12 - solarLead_h(climate, day);
  const clock = (hour: number) => ((hour % 24) + 24) % 24;
  return { from_h: clock(noon_h + half_h), to_h: clock(noon_h - half_h) };
}
