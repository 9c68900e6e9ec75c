import { DEG } from "../numeric/angle.ts";
import { cosBetween, sunDirection, type Direction } from "./direction.ts";
import { extraterrestrialBetween_Wh_m2 } from "./extraterrestrial.ts";
import { litSpans } from "./litSpans.ts";
import type { SunDay } from "./sunDay.ts";

/** Pieces an hour is cut into: whole-hour geometry is wrong by up to 8 % on a steep panel in winter. */
const PIECES = 6;

/** The sun lower than this is taken as this high, at its own azimuth; R_b would otherwise run away. */
const [LOW_SIN, LOW_COS] = [Math.sin(5 * DEG), Math.cos(5 * DEG)];

/**
 * R_b at an instant: beam on the plane against beam on the horizontal, max(cos θ, 0)/cos θz, with the sun under 5° lifted
 * to 5° at its azimuth. Source: Duffie & Beckman, eq. 1.8.1; the 5° floor is ours.
 */
export function beamRatio(sun: Direction, normal: Direction): number {
  const seen = sun.up < LOW_SIN ? lifted(sun) : sun;
  return Math.max(0, cosBetween(seen, normal)) / seen.up;
}

function lifted(sun: Direction): Direction {
  const scale = LOW_COS / Math.hypot(sun.north, sun.east);
  return { up: LOW_SIN, north: scale * sun.north, east: scale * sun.east };
}

/**
 * R_b of an hour: six pieces, each at the middle of its lit part, weighed by the extraterrestrial irradiation of each.
 *
 * @param start_rad hour angle of the hour's start, any turn [rad]
 * @returns 0 where the sun is down throughout
 */
export function beamRatioOfHour(day: SunDay, normal: Direction, start_rad: number): number {
  const piece = Math.PI / 12 / PIECES;
  let beam = 0;
  let flat = 0;
  for (let i = 0; i < PIECES; i++) {
    for (const { from_rad, to_rad } of litSpans(start_rad + i * piece, piece, day.sunset_rad)) {
      const weight = extraterrestrialBetween_Wh_m2(day, from_rad, to_rad);
      beam += weight * beamRatio(sunDirection(day, (from_rad + to_rad) / 2), normal);
      flat += weight;
    }
  }
  return flat > 0 ? beam / flat : 0;
}
