import { DEG } from "../numeric/angle.ts";
import { extraterrestrialBetween_Wh_m2 } from "./extraterrestrial.ts";
import { litSpans } from "./litSpans.ts";
import type { SunDay } from "./sunDay.ts";

/** Pieces an hour is cut into: whole-hour geometry is wrong by up to 8 % on a steep panel in winter. */
const PIECES = 6;

/** The sun lower than this is taken as this high, at its own azimuth; R_b would otherwise run away. */
const [LOW_SIN, LOW_COS] = [Math.sin(5 * DEG), Math.cos(5 * DEG)];

/** Upward normal of a plane: components up, north and east. */
export interface PlaneNormal {
  readonly up: number;
  readonly north: number;
  readonly east: number;
}

/** @param azimuth_deg clockwise from north [deg] */
export function planeNormal(tilt_deg: number, azimuth_deg: number): PlaneNormal {
  const flat = Math.sin(tilt_deg * DEG);
  return {
    up: Math.cos(tilt_deg * DEG),
    north: flat * Math.cos(azimuth_deg * DEG),
    east: flat * Math.sin(azimuth_deg * DEG),
  };
}

/**
 * R_b at an instant: beam on the plane against beam on the horizontal, max(cos θ, 0)/cos θz.
 * Source: Duffie & Beckman, eq. 1.8.1, with azimuth from north; the 5° floor is ours.
 */
export function beamRatioAt(day: SunDay, normal: PlaneNormal, hourAngle_rad: number): number {
  const cosHour = Math.cos(hourAngle_rad);
  const up = day.still + day.swing * cosHour;
  const north = day.cosLatitude * day.sinDeclination - day.sinLatitude * day.cosDeclination * cosHour;
  const east = -day.cosDeclination * Math.sin(hourAngle_rad);
  const lift = up < LOW_SIN ? LOW_COS / Math.hypot(north, east) : 1;
  const height = Math.max(up, LOW_SIN);
  const facing = normal.up * height + lift * (normal.north * north + normal.east * east);
  return Math.max(0, facing) / height;
}

/**
 * R_b of an hour: six pieces, each at the middle of its lit part, weighed by the extraterrestrial irradiation of each.
 *
 * @param start_rad hour angle of the hour's start, any turn [rad]
 * @returns 0 where the sun is down throughout
 */
export function beamRatioOfHour(day: SunDay, normal: PlaneNormal, start_rad: number): number {
  const piece = Math.PI / 12 / PIECES;
  let beam = 0;
  let flat = 0;
  for (let i = 0; i < PIECES; i++) {
    for (const { from_rad, to_rad } of litSpans(start_rad + i * piece, piece, day.sunset_rad)) {
      const weight = extraterrestrialBetween_Wh_m2(day, from_rad, to_rad);
      beam += weight * beamRatioAt(day, normal, (from_rad + to_rad) / 2);
      flat += weight;
    }
  }
  return flat > 0 ? beam / flat : 0;
}
