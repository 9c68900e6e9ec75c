import { scaleLinear, type ScaleLinear } from "d3";
import { clamp, finite } from "../paper/numbers.ts";
import type { ChargePicture } from "./chargePicture.ts";

export const defaultDark = { from_h: 18, to_h: 6 };

/**
 * How many days to draw: the nights asked and a little over, on to the last cut-off where that is not far beyond, but
 * never past twice the nights (or a week), so that one sturdy setup does not squeeze the one that fails into a corner.
 */
export function chargeSpan_days({ setups, nights, horizon_days }: ChargePicture): number {
  const lasts = setups.map(({ days }) => days.p50).filter((days) => days !== null);
  const wanted = Math.max(finite("nights", nights) + 0.5, ...lasts.map((days) => days + 0.5));
  const most = Math.max(2 * nights, 5);
  return Math.max(1, Math.min(Math.ceil(Math.min(wanted, most)), Math.ceil(horizon_days)));
}

export interface PlotBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface ChargeScales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Days across, 0 to 100 % up; the charge axis never zooms. */
export const chargeScales = (box: PlotBox, span_days: number): ChargeScales => ({
  x: scaleLinear([0, span_days], [box.left, box.right]),
  y: scaleLinear([0, 1], [box.bottom, box.top]),
});

/** Nights inside the span, as [from, to] in days from arrival. */
export function nightSpans(picture: ChargePicture, span_days: number): [number, number][] {
  const dark = picture.dark === undefined ? defaultDark : picture.dark;
  if (dark === null) return [];
  const arrival_h = picture.arrival_h ?? 15;
  const length_h = (dark.to_h - dark.from_h + 24) % 24 || 24;
  const spans: [number, number][] = [];
  for (let day = -1; day <= span_days; day++) {
    const from = (dark.from_h - arrival_h) / 24 + day;
    const within: [number, number] = [clamp(from, 0, span_days), clamp(from + length_h / 24, 0, span_days)];
    if (within[1] > within[0]) spans.push(within);
  }
  return spans;
}

/** A value of an hourly series at a time between hours; the last value holds past its end, null where there is none. */
export function chargeAt(series: readonly number[], days: number): number | null {
  if (series.length === 0) return null;
  const hour = clamp(days * 24, 0, series.length - 1);
  const before = series[Math.floor(hour)] as number;
  const after = series[Math.ceil(hour)] as number;
  return before + (after - before) * (hour - Math.floor(hour));
}

export interface ChargePoint {
  readonly days: number;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
  readonly average: number;
}

/** The hours to draw, thinned where there are more than the picture has pixels for. Charges are held to 0 to 1. */
export function chargePoints(
  { charge, id }: ChargePicture["setups"][number],
  span_days: number,
  room_px: number,
): ChargePoint[] {
  const hours = Math.min(charge.p50.length, Math.floor(span_days * 24) + 1);
  const step = Math.max(1, Math.floor(hours / room_px));
  const points: ChargePoint[] = [];
  for (let hour = 0; hour < hours; hour += step) {
    const value = (name: "p10" | "p50" | "p90" | "average") =>
      clamp(finite(`charge.${name}[${hour}] of ${id}`, charge[name][hour] ?? charge.p50[hour] ?? 0), 0, 1);
    points.push({
      days: hour / 24,
      low: value("p10"),
      mid: value("p50"),
      high: value("p90"),
      average: value("average"),
    });
  }
  return points;
}
