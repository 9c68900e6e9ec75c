import { litSpans, type LitSpan } from "./litSpans.ts";

/** The two constants of the total's hourly share, which is (π/24)(a + b cos ω)(cos ω - cos ωs)/(sin ωs - ωs cos ωs). */
export interface ShareShape {
  readonly a: number;
  readonly b: number;
}

/** Diffuse: a flat transmittance. Source: Liu & Jordan (1960), Duffie & Beckman, eq. 2.13.4. */
export const DIFFUSE_SHAPE: ShareShape = { a: 1, b: 0 };

/** Total. Source: Collares-Pereira & Rabl (1979), Solar Energy 22:155; Duffie & Beckman, eq. 2.13.2. */
export function totalShape(sunset_rad: number): ShareShape {
  const late = Math.sin(sunset_rad - Math.PI / 3);
  return { a: 0.409 + 0.5016 * late, b: 0.6609 - 0.4767 * late };
}

/**
 * The share as published, at an hour angle: an hour centred there takes about this much of the day.
 *
 * @returns share of the day's sum for an hour; 0 where the sun is down
 */
export function shareAt(shape: ShareShape, sunset_rad: number, hourAngle_rad: number): number {
  if (!(Math.abs(hourAngle_rad) < sunset_rad)) return 0;
  const above = Math.cos(hourAngle_rad) - Math.cos(sunset_rad);
  const bend = shape.a + shape.b * Math.cos(hourAngle_rad);
  return ((Math.PI / 24) * bend * above) / (Math.sin(sunset_rad) - sunset_rad * Math.cos(sunset_rad));
}

/**
 * The share as published, integrated over the lit parts of a stretch of hour angle. Over a whole day the diffuse gives 1
 * and the total 0.97 to 1.05, which is why `fillHourShares` divides by the day's sum.
 */
export function shareOver(shape: ShareShape, sunset_rad: number, spans: readonly LitSpan[]): number {
  let sum = 0;
  for (const span of spans) {
    sum += primitive(shape, sunset_rad, span.to_rad) - primitive(shape, sunset_rad, span.from_rad);
  }
  return sum / (2 * (Math.sin(sunset_rad) - sunset_rad * Math.cos(sunset_rad)));
}

/** ∫ (a + b cos ω)(cos ω - cos ωs) dω */
function primitive({ a, b }: ShareShape, sunset_rad: number, w: number): number {
  const dip = Math.cos(sunset_rad);
  return a * (Math.sin(w) - dip * w) + b * (w / 2 + (Math.sin(w) * Math.cos(w)) / 2 - dip * Math.sin(w));
}

/**
 * Writes a day's 24 hourly shares so that they sum to 1; all are 0 in polar night.
 *
 * @param start_rad hour angle of the first hour's start; the hours then run round the whole circle [rad]
 * @param out receives 24 values from `offset`
 */
export function fillHourShares(
  shape: ShareShape,
  sunset_rad: number,
  start_rad: number,
  out: Float64Array,
  offset: number,
): void {
  const hour = Math.PI / 12;
  let sum = 0;
  for (let h = 0; h < 24; h++) {
    const spans = litSpans(start_rad + h * hour, hour, sunset_rad);
    const share = spans.length === 0 ? 0 : Math.max(0, shareOver(shape, sunset_rad, spans));
    out[offset + h] = share;
    sum += share;
  }
  if (sum > 0) for (let h = 0; h < 24; h++) out[offset + h] = (out[offset + h] ?? 0) / sum;
}
