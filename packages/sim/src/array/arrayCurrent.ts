import { mustBeOneOf } from "../numeric/must.ts";
import type { SolarArray } from "../study.ts";
import { ARRAY_WIRING_LOSS, RATED_CELL_C, RATED_W_m2, ROSS_K_m2_W, SOLAR_CHARGERS } from "./figures.ts";
import { requireArray } from "./requireArray.ts";

/**
 * Adds the current an array gives through a pulse-width (PWM) charger, hour by hour, to `out`: (watts/Vmp) × G/1000 ×
 * (1.06 + 0.0012 (Tc - 25)) × (1 - soiling) × (1 - wiring), with Vmp 18 V for each 12 V of bank. Harvest is this current
 * times bank volts; γ does not enter. Neither shade nor the charger's rating is in it. Source: see `SOLAR_CHARGERS`.
 *
 * @param nominal_V the bank's, 12 or 24 [V]
 * @param poa irradiance in the plane of the array, by hour [W/m²]
 * @param air_C air temperature, as many hours [°C]
 * @param out is added to, as many hours [A]
 * @throws RangeError where the array is out of range or lengths differ
 */
export function arrayCurrent_A(
  array: SolarArray,
  nominal_V: 12 | 24,
  poa: Float64Array,
  air_C: Float64Array,
  out: Float64Array,
): void {
  requireArray(array, poa, air_C, out);
  mustBeOneOf("nominal_V", nominal_V, [12, 24]);
  const { panelVmp_V_per_12V, currentOverRated, currentPerK } = SOLAR_CHARGERS.pwm;
  const rated_A = array.watts / (panelVmp_V_per_12V * (nominal_V / 12));
  const perLight = (rated_A / RATED_W_m2) * (1 - array.soiling) * (1 - ARRAY_WIRING_LOSS);
  const ross = ROSS_K_m2_W[array.mount];
  for (let h = 0; h < poa.length; h++) {
    const light = poa[h] ?? NaN;
    const warm = currentOverRated + currentPerK * ((air_C[h] ?? NaN) + ross * light - RATED_CELL_C);
    out[h] = (out[h] ?? NaN) + perLight * light * Math.max(0, warm);
  }
}
