import { DEG } from "../numeric/angle.ts";
import { mustLie } from "../numeric/must.ts";

/**
 * Hour angle of sunset: 0 in polar night, 180 under the midnight sun, never NaN.
 * Source: Duffie & Beckman, eq. 1.6.10, cos ωs = -tan φ tan δ, clamped.
 *
 * @param latitude_deg -90 to 90 [deg]
 * @param declination_deg -23.5 to 23.5 [deg]
 * @returns 0 to 180 [deg]
 * @throws RangeError out of range
 */
export function sunsetHourAngle_deg(latitude_deg: number, declination_deg: number): number {
  mustLie("latitude_deg", latitude_deg, -90, 90);
  mustLie("declination_deg", declination_deg, -23.5, 23.5);
  const cosine = -Math.tan(latitude_deg * DEG) * Math.tan(declination_deg * DEG);
  return Math.acos(Math.min(1, Math.max(-1, cosine))) / DEG;
}
