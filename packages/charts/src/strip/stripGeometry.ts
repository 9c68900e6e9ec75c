import { clamp, finite } from "../paper/numbers.ts";

/** Where hours stand on a 24-hour strip, and which hour a pointer is over. */
export interface StripGeometry {
  /** where a clock hour stands [px] */
  readonly pxAt: (hour: number) => number;
  /** the clock hour under a pointer, snapped to the quarter hour, 0 to 24 */
  readonly hourAt: (x_px: number) => number;
  /** a window as one piece, or as two where it runs past midnight; from = to is the whole day */
  readonly pieces: (from: number, to: number) => readonly { readonly x: number; readonly width: number }[];
}

/** Snaps a clock hour to the quarter. */
export const quarter = (hour: number): number => Math.round(hour * 4) / 4;

/**
 * A strip of 24 hours.
 * @param left_px where hour 0 stands
 * @param width_px of the whole day, over 0
 * @throws RangeError where it is not
 */
export function stripGeometry(left_px: number, width_px: number): StripGeometry {
  if (!(width_px > 0)) throw new RangeError(`width_px must be over 0, got ${width_px}`);
  const pxAt = (hour: number) => left_px + (finite("hour", hour) / 24) * width_px;
  const piece = (from: number, to: number) => ({ x: pxAt(from), width: pxAt(to) - pxAt(from) });
  return {
    pxAt,
    hourAt: (x_px) => quarter(clamp(((x_px - left_px) / width_px) * 24, 0, 24)),
    pieces: (from, to) => {
      if (from < to) return [piece(from, to)];
      return [piece(0, to), piece(from, 24)].filter(({ width }) => width > 0);
    },
  };
}
