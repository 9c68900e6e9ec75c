import { constants, deflateRawSync } from "node:zlib";
import { guess, type Plane } from "../../../../packages/catalogue/src/climate/planes.ts";

/** Packs whole-number tables for unpackPlanes (packages/catalogue/src/climate/planes.ts), which says how. */
export function packPlanes(planes: readonly Plane[]): string {
  const folded = planes.flatMap((plane) => differences(plane).map((d) => (d >= 0 ? 2 * d : -2 * d - 1)));
  const worst = folded.reduce((a, b) => Math.max(a, b), 0);
  if (!(worst <= 0xffff)) throw new RangeError(`a difference does not fit two bytes: ${worst}`);
  const bytes = Uint8Array.from([...folded.map((f) => f & 0xff), ...folded.map((f) => f >>> 8)]);
  // run-length strategy: the differences are noise, in which a search for repeats finds nothing and costs a twelfth more
  return deflateRawSync(bytes, { level: 9, memLevel: 9, strategy: constants.Z_RLE }).toString("base64");
}

function differences({ rows, columns, values }: Plane): number[] {
  const out: number[] = [];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      out.push(values[row * columns + column]! - guess(values, row, column, columns));
  return out;
}
