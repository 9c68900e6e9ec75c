import { radiationPacked } from "../data/radiation.ts";
import { unpackPlanes, type Plane } from "./planes.ts";

/**
 * How the radiation table is held: cells of one degree from `southEdge_deg` northwards and from 180° W eastwards, a plane
 * a month. A cell holds round(perRoot × √(kWh/m²/day)): the root keeps the rounding small against the value in dull
 * months as well as bright ones, at most 0.6 % at 5, 1.3 % at 1 and 2.8 % at 0.2 kWh/m²/day, where the data themselves
 * are good to about 5 %.
 */
export const radiationTable = { southEdge_deg: -61, rows: 134, columns: 360, perRoot: 80 } as const;

let months: readonly Plane[] | null = null;

/** The table, unpacked at first use. Each month is packed as its difference from the month before. */
function radiationMonths(): readonly Plane[] {
  if (months) return months;
  const { rows, columns } = radiationTable;
  const planes = unpackPlanes(radiationPacked, Array<{ rows: number; columns: number }>(12).fill({ rows, columns }));
  for (let month = 1; month < 12; month++) {
    const before = planes[month - 1]!.values;
    const { values } = planes[month]!;
    for (let at = 0; at < values.length; at++) values[at]! += before[at]!;
  }
  return (months = planes);
}

/**
 * Mean daily global horizontal irradiation by month [kWh/m²/day], 12 values, January first: bilinear between the four
 * surrounding cell centres, longitude wrapped. Data: NASA SSE Release 6.0 (see credits).
 *
 * @param latitude_deg -60 to 72, north positive
 * @param longitude_deg east positive, any number of turns
 */
export function radiationAt(latitude_deg: number, longitude_deg: number): number[] {
  const { southEdge_deg, rows, columns, perRoot } = radiationTable;
  const y = latitude_deg - southEdge_deg - 0.5;
  if (!(y >= 0 && y <= rows - 1)) throw new RangeError(`latitude_deg must be -60 to 72, got ${latitude_deg}`);
  if (!Number.isFinite(longitude_deg)) throw new RangeError(`longitude_deg must be a number, got ${longitude_deg}`);
  const x = wrapped(longitude_deg + 180 - 0.5, columns);
  const south = Math.min(Math.floor(y), rows - 2);
  const west = Math.floor(x) % columns;
  const east = (west + 1) % columns;
  const [up, right] = [y - south, x - Math.floor(x)];
  return radiationMonths().map(({ values }) => {
    const cell = (row: number, column: number) => (values[row * columns + column]! / perRoot) ** 2;
    const below = cell(south, west) * (1 - right) + cell(south, east) * right;
    const above = cell(south + 1, west) * (1 - right) + cell(south + 1, east) * right;
    return below * (1 - up) + above * up;
  });
}

function wrapped(value: number, turn: number): number {
  return ((value % turn) + turn) % turn;
}
