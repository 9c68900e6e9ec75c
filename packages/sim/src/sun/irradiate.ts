import { mustHold } from "../numeric/must.ts";
import { diffuseFraction } from "./diffuseFraction.ts";
import { hdkr } from "./hdkr.ts";
import type { PlaneGeometry } from "./planeGeometry.ts";

/**
 * Irradiance of a plane under one sky. Each day's total is K × H0, its diffuse part after Erbs, Klein & Duffie (1982);
 * hours take their shares, an hour's diffuse never more than its total, and go onto the plane by HDKR. A flat plane gets the
 * horizontal total exactly. Allocates nothing.
 *
 * @param clearness of each day, 0 (dark) to 1, `plane.days` values
 * @param out receives the mean irradiance of each hour, `plane.days` × 24 values [W/m²]
 * @throws RangeError where a length does not fit
 */
export function irradiate(plane: PlaneGeometry, clearness: Float64Array, out: Float64Array): void {
  mustHold("clearness", clearness, plane.days);
  mustHold("out", out, plane.days * 24);
  for (let day = 0; day < plane.days; day++) irradiateDay(plane, day, clearness[day] ?? NaN, out);
}

function irradiateDay(plane: PlaneGeometry, day: number, clearness: number, out: Float64Array): void {
  if (!(clearness >= 0 && clearness <= 1)) {
    throw new RangeError(`clearness[${day}] must be 0 to 1, got ${clearness}`);
  }
  const total_Wh = clearness * (plane.h0_Wh_m2[day] ?? 0);
  const diffuse_Wh = total_Wh * diffuseFraction(clearness, plane.sunset_rad[day] ?? 0);
  const { share_total, share_diffuse, i0_Wh_m2, r_b, views } = plane;
  const flat = plane.tilt_deg === 0;
  for (let i = day * 24; i < day * 24 + 24; i++) {
    const total = total_Wh * (share_total[i] ?? 0);
    const diffuse = Math.min(total, diffuse_Wh * (share_diffuse[i] ?? 0));
    out[i] = flat ? total : hdkr(total, diffuse, i0_Wh_m2[i] ?? 0, r_b[i] ?? 0, views);
  }
}
