import { wrapDay } from "../numeric/calendar.ts";
import { mustBeWhole, mustLie } from "../numeric/must.ts";
import { seriesDay, solarLead_h } from "../numeric/solarClock.ts";
import type { Climate } from "../study.ts";
import { beamRatioOfHour } from "./beamRatio.ts";
import { directionOf, type Direction } from "./direction.ts";
import { extraterrestrialBetween_Wh_m2 } from "./extraterrestrial.ts";
import { planeViews, type PlaneViews } from "./hdkr.ts";
import { DIFFUSE_SHAPE, fillHourShares, totalShape } from "./hourShares.ts";
import { litSpans } from "./litSpans.ts";
import { SOLAR_CONSTANT_W_m2 } from "./solarConstant.ts";
import { sunDay, type SunDay } from "./sunDay.ts";

const HOUR_rad = Math.PI / 12;

/**
 * All of a plane's sun that does not depend on the sky, by calendar hour from midnight of the first day: made once, used
 * for every drawn sky.
 */
export interface PlaneGeometry {
  readonly days: number;
  readonly tilt_deg: number;
  /** clockwise from north [deg] */
  readonly azimuth_deg: number;
  readonly views: PlaneViews;
  /** extraterrestrial irradiation of the horizontal, by day [Wh/m²] */
  readonly h0_Wh_m2: Float64Array;
  /** sunset hour angle, by day [rad] */
  readonly sunset_rad: Float64Array;
  /** share of the day's total that falls in the hour; a day's 24 sum to 1, or are all 0 in polar night */
  readonly share_total: Float64Array;
  /** share of the day's diffuse that falls in the hour; sums likewise */
  readonly share_diffuse: Float64Array;
  /** extraterrestrial irradiation of the horizontal, by hour [Wh/m²] */
  readonly i0_Wh_m2: Float64Array;
  /** beam on the plane against beam on the horizontal, by hour */
  readonly r_b: Float64Array;
}

/**
 * The geometry of one plane over a stretch of days. Hour h of a day is the clock interval [h, h + 1) of standard time; the
 * sun's hour angle follows from longitude, offset and the equation of time, or is the clock's where longitude is null.
 * A day's hours run round the whole circle of hour angles, so an hour over solar midnight is that day's evening and early
 * morning together, and a day's sums hold whatever the offset.
 *
 * @param firstDayOfYear 1 to 365 [day]
 * @param days how many; past 31 December the year begins again [day]
 * @param tilt_deg 0 flat to 90 upright [deg]
 * @param azimuth_deg where the plane faces, clockwise from north, -360 to 360 [deg]
 * @param gsc_W_m2 solar constant, the same as `meanClearnessByDay` was given [W/m²]
 * @throws RangeError where an argument is out of range
 */
export function planeGeometry(
  climate: Pick<Climate, "latitude_deg" | "longitude_deg" | "utcOffset_h">,
  firstDayOfYear: number,
  days: number,
  tilt_deg: number,
  azimuth_deg: number,
  gsc_W_m2: number = SOLAR_CONSTANT_W_m2,
): PlaneGeometry {
  mustBeWhole("firstDayOfYear", firstDayOfYear, 1, 365);
  mustBeWhole("days", days, 0, 100_000);
  mustLie("tilt_deg", tilt_deg, 0, 90);
  mustLie("azimuth_deg", azimuth_deg, -360, 360);
  const plane = emptyPlane(days, tilt_deg, azimuth_deg);
  const normal = directionOf(tilt_deg, azimuth_deg);
  for (let i = 0; i < days; i++) {
    const dayOfYear = wrapDay(firstDayOfYear + i);
    const start_rad = (solarLead_h(climate, dayOfYear) - 12) * HOUR_rad;
    fillDay(plane, i, sunDay(climate.latitude_deg, seriesDay(dayOfYear), gsc_W_m2), normal, start_rad);
  }
  return plane;
}

function emptyPlane(days: number, tilt_deg: number, azimuth_deg: number): PlaneGeometry {
  const hours = () => new Float64Array(days * 24);
  return {
    days,
    tilt_deg,
    azimuth_deg,
    views: planeViews(tilt_deg),
    h0_Wh_m2: new Float64Array(days),
    sunset_rad: new Float64Array(days),
    share_total: hours(),
    share_diffuse: hours(),
    i0_Wh_m2: hours(),
    r_b: hours(),
  };
}

function fillDay(plane: PlaneGeometry, index: number, day: SunDay, normal: Direction, start_rad: number): void {
  const { sunset_rad } = day;
  plane.h0_Wh_m2[index] = extraterrestrialBetween_Wh_m2(day, -sunset_rad, sunset_rad);
  plane.sunset_rad[index] = sunset_rad;
  fillHourShares(totalShape(sunset_rad), sunset_rad, start_rad, plane.share_total, index * 24);
  fillHourShares(DIFFUSE_SHAPE, sunset_rad, start_rad, plane.share_diffuse, index * 24);
  for (let h = 0; h < 24; h++) {
    const from_rad = start_rad + h * HOUR_rad;
    let i0 = 0;
    for (const span of litSpans(from_rad, HOUR_rad, sunset_rad)) {
      i0 += extraterrestrialBetween_Wh_m2(day, span.from_rad, span.to_rad);
    }
    plane.i0_Wh_m2[index * 24 + h] = i0;
    plane.r_b[index * 24 + h] = beamRatioOfHour(day, normal, from_rad);
  }
}
