import { mustLie } from "../numeric/must.ts";
import { normalQuantile } from "../numeric/normalQuantile.ts";
import { nextUnit, skyStream } from "./skyStream.ts";

/**
 * Standard normal values day by day, each tied to the one before: x' = φ x + √(1 - φ²) e. The first is drawn from the same
 * distribution as all the others. Source: Graham, Hollands & Huget (1988), Solar Energy 40:83.
 *
 * @param dayToDay φ, 0 to 0.99
 * @param seed any safe whole number
 * @param draw which series of the seed, 0 or more
 * @throws RangeError where an argument is out of range
 */
export function gaussianDays(days: number, dayToDay: number, seed: number, draw: number): Float64Array {
  mustLie("dayToDay", dayToDay, 0, 0.99);
  const stream = skyStream(seed, draw);
  const fresh = Math.sqrt(1 - dayToDay * dayToDay);
  const series = new Float64Array(days);
  let x = 0;
  for (let day = 0; day < days; day++) {
    const drawn = normalQuantile(nextUnit(stream));
    x = day === 0 ? drawn : dayToDay * x + fresh * drawn;
    series[day] = x;
  }
  return series;
}
