import { scaleLinear, type ScaleLinear } from "d3";
import type { SizePoint } from "@stayput/sim";
import { clamp, finite, sizeOf } from "../paper/numbers.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import type { SizePicture } from "./sizePicture.ts";

/** A size and where it stands [px]. */
export interface PlacedPoint {
  readonly point: SizePoint;
  readonly index: number;
  readonly x: number;
  readonly y: number;
}

export interface SizeGeometry extends ChartGeometry {
  readonly points: readonly PlacedPoint[];
  readonly setups: readonly { readonly id: string; readonly name: string; readonly x: number; readonly y: number }[];
  /** bank and array under a point of the picture, kept inside the axes */
  readonly sizesAt: (x_px: number, y_px: number) => { readonly bank_Ah: number; readonly array_W: number };
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** From the least to the most in play with a little room, never a span of nothing. */
function spanOf(field: string, values: readonly number[], least: number): [number, number] {
  const known = values.map((value) => finite(field, value));
  const [low, high] = known.length === 0 ? [0, least] : [Math.min(...known), Math.max(...known)];
  const room = Math.max((high - low) * 0.05, (least - (high - low)) / 2);
  return [Math.max(0, low - room), high + room];
}

/** Where everything in the size chart stands. Positions are indices of `points`. */
export function sizeGeometry(picture: SizePicture, options: ChartOptions): SizeGeometry {
  const [width_px, asked_px] = sizeOf(options);
  const height_px = Math.max(asked_px, 220);
  const plot = { left: 52, top: 24, right: width_px - 14, bottom: height_px - 42 };
  const { grid, points, setups } = picture;
  const all = [...points, ...setups];
  const x = scaleLinear(spanOf("array_W", [...(grid?.arrays_W ?? []), ...all.map((p) => p.array_W)], 200), [
    plot.left,
    plot.right,
  ]);
  const y = scaleLinear(spanOf("bank_Ah", [...(grid?.banks_Ah ?? []), ...all.map((p) => p.bank_Ah)], 100), [
    plot.bottom,
    plot.top,
  ]);
  const placed = points.map((point, index) => ({ point, index, x: x(point.array_W), y: y(point.bank_Ah) }));
  return {
    width_px,
    height_px,
    plot,
    points: placed,
    setups: setups.map(({ id, name, array_W, bank_Ah }) => ({ id, name, x: x(array_W), y: y(bank_Ah) })),
    stops: placed.map(({ index }) => index),
    positionAt: (x_px, y_px) => nearestPoint(placed, x_px, y_px)?.index ?? 0,
    sizesAt: (x_px, y_px) => ({
      array_W: x.invert(clamp(x_px, plot.left, plot.right)),
      bank_Ah: y.invert(clamp(y_px, plot.top, plot.bottom)),
    }),
    x,
    y,
  };
}

const distance = (point: PlacedPoint, x_px: number, y_px: number): number => Math.hypot(point.x - x_px, point.y - y_px);

function nearestPoint(points: readonly PlacedPoint[], x_px: number, y_px: number): PlacedPoint | undefined {
  return [...points].sort((a, b) => distance(a, x_px, y_px) - distance(b, x_px, y_px))[0];
}

/** The point under a finger: the nearest within reach (22 px makes a 44 px target), or null. */
export function sizePointAt(geometry: SizeGeometry, x_px: number, y_px: number, reach_px = 22): PlacedPoint | null {
  const found = nearestPoint(geometry.points, x_px, y_px);
  return found && distance(found, x_px, y_px) <= reach_px ? found : null;
}
