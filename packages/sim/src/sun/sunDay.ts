import { DEG } from "../numeric/angle.ts";
import { mustLie } from "../numeric/must.ts";
import { declination_deg } from "./declination.ts";
import { earthSunFactor } from "./earthSunFactor.ts";
import { SOLAR_CONSTANT_W_m2 } from "./solarConstant.ts";
import { sunsetHourAngle_deg } from "./sunsetHourAngle.ts";

/** What one day's sun does at one latitude; all that hours and planes need. Radians inside. */
export interface SunDay {
  /** sin φ sin δ: cosine of the zenith angle is `still + swing cos ω` */
  readonly still: number;
  /** cos φ cos δ */
  readonly swing: number;
  /** sunset hour angle, 0 to π [rad] */
  readonly sunset_rad: number;
  /** sunlight on a surface facing the sun, outside the air [W/m²] */
  readonly normal_W_m2: number;
  readonly sinLatitude: number;
  readonly cosLatitude: number;
  readonly sinDeclination: number;
  readonly cosDeclination: number;
}

/**
 * The sun of a day of the year.
 *
 * @param latitude_deg -90 to 90 [deg]
 * @param dayOfYear 1 to 366 [day]
 * @throws RangeError out of range
 */
export function sunDay(latitude_deg: number, dayOfYear: number, gsc_W_m2: number = SOLAR_CONSTANT_W_m2): SunDay {
  mustLie("gsc_W_m2", gsc_W_m2, 1000, 2000);
  return sunAt(latitude_deg, declination_deg(dayOfYear), gsc_W_m2 * earthSunFactor(dayOfYear));
}

/**
 * The sun at a declination, for whoever has it from another formula or almanac.
 *
 * @param normal_W_m2 sunlight on a surface facing the sun, outside the air [W/m²]
 */
export function sunAt(latitude_deg: number, declination_deg: number, normal_W_m2: number): SunDay {
  const sunset_rad = sunsetHourAngle_deg(latitude_deg, declination_deg) * DEG;
  const [sinLatitude, cosLatitude] = [Math.sin(latitude_deg * DEG), Math.cos(latitude_deg * DEG)];
  const [sinDeclination, cosDeclination] = [Math.sin(declination_deg * DEG), Math.cos(declination_deg * DEG)];
  return {
    still: sinLatitude * sinDeclination,
    swing: cosLatitude * cosDeclination,
    sunset_rad,
    normal_W_m2,
    sinLatitude,
    cosLatitude,
    sinDeclination,
    cosDeclination,
  };
}
