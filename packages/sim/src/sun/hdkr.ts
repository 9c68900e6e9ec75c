import { DEG } from "../numeric/angle.ts";

/** Reflectance of the ground about a camp: 0.2, the usual figure for grass and bare soil (Duffie & Beckman, section 2.15). */
export const ALBEDO = 0.2;

/** What a plane sees of sky and ground. */
export interface PlaneViews {
  /** (1 + cos β)/2 */
  readonly sky: number;
  /** albedo × (1 - cos β)/2 */
  readonly ground: number;
  /** sin³(β/2), for the brightening near the horizon */
  readonly horizon: number;
}

export function planeViews(tilt_deg: number, albedo: number = ALBEDO): PlaneViews {
  const cosTilt = Math.cos(tilt_deg * DEG);
  return {
    sky: (1 + cosTilt) / 2,
    ground: (albedo * (1 - cosTilt)) / 2,
    horizon: Math.sin((tilt_deg * DEG) / 2) ** 3,
  };
}

/**
 * Irradiation of a tilted plane after Hay, Davies, Klucher and Reindl.
 * Source: Reindl, Beckman & Duffie (1990), Solar Energy 45:9; Duffie & Beckman, eq. 2.16.7.
 *
 * @param total on the horizontal [W/m² or Wh/m²; the same for all]
 * @param diffuse on the horizontal, at most `total`
 * @param outside extraterrestrial on the horizontal; 0 is taken as no beam aureole
 * @param beamRatio R_b
 */
export function hdkr(total: number, diffuse: number, outside: number, beamRatio: number, views: PlaneViews): number {
  if (!(total > 0)) return 0;
  const beam = total - diffuse;
  const anisotropy = outside > 0 ? Math.min(1, beam / outside) : 0;
  const round = (beam + diffuse * anisotropy) * beamRatio;
  const dome = diffuse * (1 - anisotropy) * views.sky * (1 + Math.sqrt(beam / total) * views.horizon);
  return round + dome + total * views.ground;
}
