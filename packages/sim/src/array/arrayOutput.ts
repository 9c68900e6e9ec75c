import type { SolarArray } from "../study.ts";
import { ARRAY_WIRING_LOSS, RATED_CELL_C, RATED_W_m2, ROSS_K_m2_W } from "./figures.ts";
import { requireArray } from "./requireArray.ts";

/**
 * Adds an array's power at the charger's input, hour by hour, to `out`: watts × G/1000 × [1 + γ (Tc - 25)] × (1 - soiling)
 * × (1 - wiring). Neither shade nor the charger's own loss is in it.
 * Source: Duffie & Beckman, section 23.3 (power linear in light and cell temperature); Ross (1976) for Tc.
 *
 * @param poa irradiance in the plane of the array, by hour [W/m²]
 * @param air_C air temperature, as many hours [°C]
 * @param out is added to, as many hours [W]
 * @throws RangeError where the array is out of range or lengths differ
 */
export function arrayOutput_W(array: SolarArray, poa: Float64Array, air_C: Float64Array, out: Float64Array): void {
  requireArray(array, poa, air_C, out);
  const perLight = (array.watts / RATED_W_m2) * (1 - array.soiling) * (1 - ARRAY_WIRING_LOSS);
  const ross = ROSS_K_m2_W[array.mount];
  for (let h = 0; h < poa.length; h++) {
    const light = poa[h] ?? NaN;
    const warm = 1 + array.gamma_per_K * ((air_C[h] ?? NaN) + ross * light - RATED_CELL_C);
    out[h] = (out[h] ?? NaN) + perLight * light * Math.max(0, warm);
  }
}
