import { mustLie } from "../numeric/must.ts";
import { dayAngle_rad } from "../numeric/solarClock.ts";

/**
 * Sunlight outside the air against its yearly mean: (mean distance / distance)², 1.035 in January to 0.967 in July.
 * Source: Spencer (1971), Search 2(5):172, as in Duffie & Beckman, eq. 1.4.1b.
 *
 * @param dayOfYear 1 to 366 [day]
 * @throws RangeError outside 1 to 366
 */
export function earthSunFactor(dayOfYear: number): number {
  mustLie("dayOfYear", dayOfYear, 1, 366);
  const b = dayAngle_rad(dayOfYear);
  return (
    1.00011 + 0.034221 * Math.cos(b) + 0.00128 * Math.sin(b) + 0.000719 * Math.cos(2 * b) + 0.000077 * Math.sin(2 * b)
  );
}
