import { contours } from "d3";
import type { SizeGrid } from "@stayput/sim";
import { clamp, finite } from "../paper/numbers.ts";

export type Point = readonly [x: number, y: number];

/** One level of chance: the rings to fill and the open lines to stroke, in steps of the two ladders (array, bank). */
export interface ContourLevel {
  readonly chance: number;
  readonly rings: readonly (readonly Point[])[];
  readonly lines: readonly (readonly Point[])[];
}

/**
 * Contours over the ladders. A grid with one rung either way has none. Rings close along the edge of the grid; that part
 * is no contour, so the lines leave it out.
 */
export function contourLevels(grid: SizeGrid, chances: readonly number[]): ContourLevel[] {
  const columns = grid.arrays_W.length;
  const rows = grid.banks_Ah.length;
  if (columns < 2 || rows < 2) return [];
  const values = gridValues(grid);
  const trace = contours().size([columns, rows]);
  return chances.map((chance) => {
    const rings = trace
      .contour(values, chance)
      .coordinates.flat()
      .map((ring) => ring.map(([x, y]) => onGrid(x as number, y as number, columns, rows)));
    return { chance, rings, lines: rings.flatMap((ring) => openLines(ring, columns - 1, rows - 1)) };
  });
}

function gridValues({ banks_Ah, arrays_W, chance }: SizeGrid): number[] {
  return banks_Ah.flatMap((_, b) =>
    arrays_W.map((_w, a) => finite(`chance[${b}][${a}]`, chance[b]?.[a] ?? Number.NaN)),
  );
}

/** d3 puts the middle of cell (i, j) at (i + ½, j + ½) and closes rings half a cell outside. */
const onGrid = (x: number, y: number, columns: number, rows: number): Point => [
  clamp(x - 0.5, 0, columns - 1),
  clamp(y - 0.5, 0, rows - 1),
];

const onEdge = (a: Point, b: Point, right: number, top: number): boolean =>
  (a[0] === b[0] && (a[0] === 0 || a[0] === right)) || (a[1] === b[1] && (a[1] === 0 || a[1] === top));

/** The stretches of a ring that do not run along the grid's edge; the ring may start in the middle of one. */
function openLines(ring: readonly Point[], right: number, top: number): Point[][] {
  const lines: Point[][] = [];
  let open: Point[] = [];
  for (let i = 1; i < ring.length; i++) {
    const [a, b] = [ring[i - 1] as Point, ring[i] as Point];
    if (onEdge(a, b, right, top)) {
      if (open.length > 1) lines.push(open);
      open = [];
    } else open = open.length === 0 ? [a, b] : [...open, b];
  }
  return joinEnds(open.length > 1 ? [...lines, open] : lines);
}

function joinEnds(lines: Point[][]): Point[][] {
  const [first, last] = [lines[0], lines.at(-1)];
  if (!first || !last || first === last) return lines;
  const [end, start] = [last.at(-1) as Point, first[0] as Point];
  if (end[0] !== start[0] || end[1] !== start[1]) return lines;
  return [[...last, ...first.slice(1)], ...lines.slice(1, -1)];
}
