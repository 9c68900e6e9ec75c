import { inflateSync } from "fflate";

/** A table of whole numbers, row after row. */
export interface Plane {
  readonly rows: number;
  readonly columns: number;
  readonly values: Int32Array;
}

/**
 * What a cell is likely to hold, from its neighbours to the left, above and above left: the median of left, above and
 * left + above - corner, so that edges stay sharp and slopes are followed. The packing script and the unpacking below
 * must guess alike, so both call this.
 * Source: the median predictor of Martucci 1990, as used in ISO/IEC 14495-1 (lossless image coding).
 */
export function guess(values: Int32Array, row: number, column: number, columns: number): number {
  const at = row * columns + column;
  const left = column > 0 ? values[at - 1]! : null;
  const above = row > 0 ? values[at - columns]! : null;
  if (left === null) return above ?? 0;
  if (above === null) return left;
  const corner = values[at - columns - 1]!;
  if (corner >= Math.max(left, above)) return Math.min(left, above);
  return corner <= Math.min(left, above) ? Math.max(left, above) : left + above - corner;
}

/**
 * Undoes apps/chores/src/climate/packPlanes.ts: base64 of a deflate stream that holds, for all planes in turn, first the low
 * bytes and then the high bytes of each cell's difference from its guess, signs folded in (0, -1, 1, -2, ...).
 */
export function unpackPlanes(packed: string, shapes: readonly { rows: number; columns: number }[]): Plane[] {
  const bytes = inflateSync(Uint8Array.from(atob(packed), (character) => character.charCodeAt(0)));
  const cells = shapes.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  if (bytes.length !== 2 * cells)
    throw new Error(`climate tables are damaged: ${bytes.length} bytes for ${cells} cells`);
  let next = 0;
  return shapes.map(({ rows, columns }) => {
    const values = new Int32Array(rows * columns);
    for (let at = 0; at < values.length; at++, next++) {
      const folded = bytes[next]! | (bytes[cells + next]! << 8);
      const difference = (folded >>> 1) ^ -(folded & 1);
      values[at] = guess(values, Math.floor(at / columns), at % columns, columns) + difference;
    }
    return { rows, columns, values };
  });
}
