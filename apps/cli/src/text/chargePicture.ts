import type { ChargeBand, ExplainAnswer, SetupAnswer } from "@stayput/sim";
import { letterOf } from "./heading.ts";

const ROWS = 10; // a row for each tenth of charge, from 100 % to 0 %
const COLUMNS = 72; // what is left of 80 beside the scale
const ARRIVAL_h = 15;

type Mark = readonly [row: number, column: number, sign: string];

/**
 * Charge against days in characters: height is charge, each column a few hours from arrival, nights are dotted. Of one
 * setup the middle sky (its letter) and the span of eight skies in ten (colons); of several, the middle sky of each.
 */
export function chargePicture(answer: ExplainAnswer): string[] {
  const span_h = 24 * spanOf(answer);
  const step_h = [1, 2, 3, 4, 6, 8, 12, 24].find((h) => span_h / h <= COLUMNS) ?? 24;
  const columns = Math.min(COLUMNS, Math.ceil(span_h / step_h));
  const [only, ...others] = answer.setups;
  const marks =
    only !== undefined && others.length === 0
      ? [...bandMarks(only.charge, columns, step_h), ...lineMarks(only.charge.p50, "A", columns, step_h)]
      : answer.setups.flatMap(({ charge }, i) => lineMarks(charge.p50, letterOf(i), columns, step_h));
  const grid = painted(night(columns, step_h), marks);
  return [...grid.map((row, i) => `${scale(i)} ${row.join("").trimEnd()}`), dayScale(columns, step_h)];
}

/** Days shown: the stay and a day more, or on to when the middle sky has every setup flat, but at most twice the stay. */
function spanOf({ setups, nights, horizon_days }: ExplainAnswer): number {
  const flat = setups.map(({ days }: SetupAnswer) => days.drawn.p50 ?? 0);
  const longest = Math.max(nights, Math.min(2 * nights, Math.max(...flat)));
  return Math.min(horizon_days, Math.ceil(longest) + 1);
}

const rowOf = (charge: number): number => ROWS - Math.round(Math.min(1, Math.max(0, charge)) * ROWS);

const hourOf = (column: number, step_h: number): number => Math.floor((column + 0.5) * step_h);

function lineMarks(line: readonly number[], sign: string, columns: number, step_h: number): Mark[] {
  return Array.from({ length: columns }, (_, column) => line[hourOf(column, step_h)]).flatMap((charge, column) =>
    charge === undefined ? [] : [[rowOf(charge), column, sign] as const],
  );
}

function bandMarks({ p10, p90 }: ChargeBand, columns: number, step_h: number): Mark[] {
  return Array.from({ length: columns }, (_, column) => column).flatMap((column) => {
    const low = p10[hourOf(column, step_h)];
    const high = p90[hourOf(column, step_h)];
    if (low === undefined || high === undefined) return [];
    const top = rowOf(high);
    return Array.from({ length: rowOf(low) - top + 1 }, (_, i): Mark => [top + i, column, ":"]);
  });
}

/** Rows of spaces, dotted from 18:00 to 06:00 where a column is short enough to tell night from day. */
function night(columns: number, step_h: number): string[][] {
  const sky = Array.from({ length: columns }, (_, column) => {
    const clock_h = (ARRIVAL_h + (column + 0.5) * step_h) % 24;
    return step_h <= 6 && (clock_h >= 18 || clock_h < 6) ? "." : " ";
  });
  return Array.from({ length: ROWS + 1 }, () => [...sky]);
}

/** Marks laid over the sky. A setup's letter covers the span; where two setups meet stands a star. */
function painted(grid: string[][], marks: readonly Mark[]): string[][] {
  for (const [row, column, sign] of marks) {
    const line = grid[row];
    if (line === undefined) continue;
    const taken = !" .:".includes(line[column] ?? " ");
    line[column] = taken ? "*" : sign;
  }
  return grid;
}

const scale = (row: number): string => (row % 2 === 0 ? `${100 - row * 10} %` : "").padStart(6);

/** Day numbers under the columns at which each 24 hours begin, as many as have room. */
function dayScale(columns: number, step_h: number): string {
  const perDay = 24 / step_h;
  const every = Math.ceil(4 / perDay);
  let line = "";
  for (let day = 0; day * perDay < columns; day += every) line = line.padEnd(Math.round(day * perDay)) + String(day);
  return `${" ".repeat(7)}${line}`;
}

/** What the signs of the picture mean, in one sentence. */
export function chargeKey({ setups }: ExplainAnswer): string {
  const lead = "Charge of the bank, parked, against days from arrival at 15:00 (dotted: 18:00 to 06:00).";
  const signs =
    setups.length === 1
      ? "A is the middle sky, colons span eight skies in ten."
      : "Letters are the middle sky of each setup, a star where they meet.";
  return `${lead} ${signs}`;
}
