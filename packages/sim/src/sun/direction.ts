import { DEG } from "../numeric/angle.ts";
import type { SunDay } from "./sunDay.ts";

/** A unit vector: components up, north and east. */
export interface Direction {
  readonly up: number;
  readonly north: number;
  readonly east: number;
}

/**
 * Where the sun stands at an hour angle; `up` is the cosine of its zenith angle.
 * Source: Duffie & Beckman, eqs. 1.6.5 and 1.6.6, as a vector.
 *
 * @param hourAngle_rad noon 0, afternoon positive [rad]
 */
export function sunDirection(day: SunDay, hourAngle_rad: number): Direction {
  const cosHour = Math.cos(hourAngle_rad);
  return {
    up: day.still + day.swing * cosHour,
    north: day.cosLatitude * day.sinDeclination - day.sinLatitude * day.cosDeclination * cosHour,
    east: -day.cosDeclination * Math.sin(hourAngle_rad),
  };
}

/**
 * A direction from its angle off the vertical and its compass bearing: the normal of a plane from tilt and azimuth, or the
 * sun from zenith and azimuth.
 *
 * @param azimuth_deg clockwise from north [deg]
 */
export function directionOf(fromVertical_deg: number, azimuth_deg: number): Direction {
  const flat = Math.sin(fromVertical_deg * DEG);
  return {
    up: Math.cos(fromVertical_deg * DEG),
    north: flat * Math.cos(azimuth_deg * DEG),
    east: flat * Math.sin(azimuth_deg * DEG),
  };
}

/** Cosine of the angle between two directions: of incidence, between the sun and a plane's normal. */
export function cosBetween(a: Direction, b: Direction): number {
  return a.up * b.up + a.north * b.north + a.east * b.east;
}
