import { encode } from "uqr";

/** Bytes that the largest QR code holds at its lowest correction level (ISO/IEC 18004, version 40-L). */
export const MOST_BYTES = 2953;

export interface Qr {
  /** modules across, the quiet zone of four on each side included */
  readonly size: number;
  /** an SVG path of the dark modules, one unit each */
  readonly path: string;
  /** 1 to 40; beyond 20 or so a phone has to be held near */
  readonly version: number;
}

/** A text as a QR code. Null where it is too long for one. */
export function qrOf(text: string): Qr | null {
  if (new TextEncoder().encode(text).length > MOST_BYTES) return null;
  const { data, size, version } = encode(text, { ecc: "L", boostEcc: true, border: 4 });
  return { size, path: data.map(rowPath).join(""), version };
}

/** Runs of dark modules as bars: far fewer pieces than single squares, and no seams between them. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = "";
  for (let x = 0; x < row.length; x++) {
    if (row[x] !== true) continue;
    const from = x;
    while (row[x + 1] === true) x++;
    path += `M${from} ${y}h${x + 1 - from}v1h${from - x - 1}z`;
  }
  return path;
}
