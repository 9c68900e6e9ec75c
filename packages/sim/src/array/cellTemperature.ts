import type { SolarArray } from "../study.ts";
import { ROSS_K_m2_W } from "./figures.ts";

/**
 * Cell temperature: air plus a rise in step with the light. Source: Ross (1976); coefficients Skoplaki & Palyvos (2009).
 *
 * @param poa_W_m2 irradiance in the plane of the array [W/m²]
 */
export function cellTemperature_C(mount: SolarArray["mount"], poa_W_m2: number, air_C: number): number {
  return air_C + ROSS_K_m2_W[mount] * poa_W_m2;
}
