import { SOLAR_CONSTANT_W_m2 } from "./solarConstant.ts";
import { sunDay, type SunDay } from "./sunDay.ts";

/**
 * Extraterrestrial irradiation of a horizontal surface between two hour angles that lie within sunrise and sunset.
 * Source: Duffie & Beckman, eq. 1.10.4.
 *
 * @param from_rad,to_rad hour angles, noon 0, afternoon positive, within ±`day.sunset_rad` [rad]
 * @returns [Wh/m²], never negative
 */
export function extraterrestrialBetween_Wh_m2(day: SunDay, from_rad: number, to_rad: number): number {
  const integral = day.swing * (Math.sin(to_rad) - Math.sin(from_rad)) + day.still * (to_rad - from_rad);
  return Math.max(0, (12 / Math.PI) * day.normal_W_m2 * integral);
}

/**
 * A day's extraterrestrial irradiation of a horizontal surface, H0, by the handbook's count of days. Source: Duffie & Beckman,
 * eq. 1.10.3. A present calendar day is `seriesDay` of it; `planeGeometry` and `monthlyClearness` take it so.
 *
 * @param latitude_deg -90 to 90, north positive [deg]
 * @param dayOfYear 1 to 366 [day]
 * @param gsc_W_m2 solar constant; the handbook's examples use 1367 [W/m²]
 * @returns 0 in polar night [Wh/m²]
 * @throws RangeError out of range
 */
export function dailyExtraterrestrial_Wh_m2(
  latitude_deg: number,
  dayOfYear: number,
  gsc_W_m2: number = SOLAR_CONSTANT_W_m2,
): number {
  const day = sunDay(latitude_deg, dayOfYear, gsc_W_m2);
  return extraterrestrialBetween_Wh_m2(day, -day.sunset_rad, day.sunset_rad);
}
