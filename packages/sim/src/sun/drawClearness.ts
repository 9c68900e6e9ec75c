import { mustLie } from "../numeric/must.ts";
import { normalCdf } from "../numeric/normalCdf.ts";
import { bendtOf, bendtQuantile, type Bendt } from "./bendt.ts";
import { gaussianDays } from "./gaussianDays.ts";

/**
 * One drawn sky: a clearness for every day, spread about the day's mean as Bendt's distribution says and tied to the day
 * before by a Gaussian AR(1). The same seed and draw give the same sky whatever other draws are made, and a longer sky
 * begins as a shorter one does.
 * Source: Bendt, Collares-Pereira & Rabl (1981); Graham, Hollands & Huget (1988), Solar Energy 40:83.
 *
 * @param meanK mean clearness of each day, as `meanClearnessByDay` gives it, 0.06 to 0.835
 * @param dayToDay lag-1 of the Gaussian, 0 to 0.99; 0.29 is usual, dry and tropical places run to 0.4-0.5
 * @param seed any safe whole number
 * @param draw which sky of the seed, 0 or more
 * @returns as many values as `meanK`, each within that day's darkest and clearest
 * @throws RangeError where an argument is out of range
 */
export function drawClearness(meanK: Float64Array, dayToDay: number, seed: number, draw: number): Float64Array {
  const sky = gaussianDays(meanK.length, dayToDay, seed, draw);
  for (let day = 0; day < sky.length; day++) {
    sky[day] = bendtQuantile(remembered(meanK[day] ?? NaN), normalCdf(sky[day] ?? NaN));
  }
  return sky;
}

/** An ensemble asks for the same few means hundreds of times, and γ takes a root finding: keep them. */
const memory = new Map<number, Bendt>();
const MEMORY_SIZE = 4096;

function remembered(mean: number): Bendt {
  const known = memory.get(mean);
  if (known !== undefined) return known;
  mustLie("meanK", mean, 0.055, 0.84);
  const found = bendtOf(mean);
  if (memory.size >= MEMORY_SIZE) memory.clear();
  memory.set(mean, found);
  return found;
}
