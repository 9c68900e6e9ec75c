import { DEG } from "../numeric/angle.ts";

/** Sunset hour angle that parts winter from the rest of the year [rad]. */
const WINTER_rad = 81.4 * DEG;

/**
 * Share of a day's irradiation that is diffuse, from the day's clearness.
 * Source: Erbs, Klein & Duffie (1982), Solar Energy 28:293; Duffie & Beckman, eq. 2.11.1. Capped at 1: the second branch
 * passes it by 0.008 for the darkest days.
 *
 * @param clearness the day's K, 0 or more
 * @param sunset_rad sunset hour angle [rad]
 */
export function diffuseFraction(clearness: number, sunset_rad: number): number {
  const k = clearness;
  if (sunset_rad <= WINTER_rad) {
    return k < 0.715 ? 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143;
  }
  return k < 0.722 ? Math.min(1, 1 + k * (0.2832 + k * (-2.5557 + k * 0.8448))) : 0.175;
}
