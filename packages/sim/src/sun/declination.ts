import { DEG } from "../numeric/angle.ts";
import { mustLie } from "../numeric/must.ts";
import { dayAngle_rad } from "../numeric/solarClock.ts";

/**
 * Solar declination: how far north of the equator the noon sun stands.
 * Source: Spencer (1971), Search 2(5):172, as in Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 1.6.1b.
 * Accuracy: within 0.035° at the start of any day of 1950, the series' epoch; for the noon of a present day give it
 * `seriesDay` of the day, which is within 0.05° in 2025 (against astronomy-engine 2.1.19).
 *
 * @param dayOfYear 1 (1 January) to 366 [day]
 * @returns positive north [deg]
 * @throws RangeError outside 1 to 366
 */
export function declination_deg(dayOfYear: number): number {
  mustLie("dayOfYear", dayOfYear, 1, 366);
  const b = dayAngle_rad(dayOfYear);
  const series_rad =
    0.006918 -
    0.399912 * Math.cos(b) +
    0.070257 * Math.sin(b) -
    0.006758 * Math.cos(2 * b) +
    0.000907 * Math.sin(2 * b) -
    0.002697 * Math.cos(3 * b) +
    0.00148 * Math.sin(3 * b);
  return series_rad / DEG;
}
