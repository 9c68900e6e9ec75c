import { mustBeOneOf, mustHold, mustLie } from "../numeric/must.ts";
import type { SolarArray } from "../study.ts";
import { ROSS_K_m2_W } from "./figures.ts";

/** Refuses an array out of range, or hours that do not match. Throws RangeError. */
export function requireArray(array: SolarArray, poa: Float64Array, air_C: Float64Array, out: Float64Array): void {
  mustLie("watts", array.watts, 0, 100_000);
  mustLie("soiling", array.soiling, 0, 1);
  mustLie("gamma_per_K", array.gamma_per_K, -0.02, 0);
  mustBeOneOf("mount", array.mount, Object.keys(ROSS_K_m2_W));
  mustHold("air_C", air_C, poa.length);
  mustHold("out", out, poa.length);
}
