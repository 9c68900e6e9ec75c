/** Rounds to a tenth of a pixel, which is finer than a screen and keeps the markup short. */
export const px = (value: number): number => Math.round(value * 10) / 10 || 0;

export const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Throws a RangeError naming the field when the value is not a finite number. */
export function finite(field: string, value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`${field} must be a finite number, got ${value}`);
  return value;
}

/** The nearest of a rising list to a value; throws on an empty list. */
export function nearest(stops: readonly number[], value: number): number {
  return stops.reduce((best, stop) => (Math.abs(stop - value) < Math.abs(best - value) ? stop : best));
}

/** The size a picture is laid out at: never under 240 × 120, so that labels have room. */
export function sizeOf({ width_px, height_px }: { width_px: number; height_px: number }): [number, number] {
  return [Math.max(240, finite("width_px", width_px)), Math.max(120, finite("height_px", height_px))];
}
