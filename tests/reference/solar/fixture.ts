import { readFileSync } from "node:fs";

type Cell = number | string;
interface Group {
  readonly id: string;
  readonly source: string;
  readonly columns?: readonly string[];
  readonly rows?: readonly (readonly Cell[])[];
  readonly cases?: readonly Readonly<Record<string, Cell>>[];
}
const { groups } = JSON.parse(
  readFileSync(new URL("../../fixtures/reference/solar.json", import.meta.url), "utf8"),
) as { groups: readonly Group[] };

/** A row of the fixture by its columns' names. A name that is not there is an error, never an empty check. */
export interface Row {
  readonly number: (column: string) => number;
  readonly text: (column: string) => string;
}

export function groupOf(id: string): Group {
  const found = groups.find((group) => group.id === id);
  if (found === undefined) throw new Error(`solar.json has no group ${id}`);
  return found;
}

export function rowsOf(id: string): Row[] {
  const { columns = [], rows, cases = [] } = groupOf(id);
  const records = rows?.map((row) => Object.fromEntries(columns.map((column, i) => [column, row[i]]))) ?? cases;
  return records.map((record) => {
    const cell = (column: string): Cell => {
      const value = record[column];
      if (value === undefined) throw new Error(`${id} has no ${column}`);
      return value;
    };
    return { number: (column) => Number(cell(column)), text: (column) => String(cell(column)) };
  });
}

export const sourceOf = (id: string): string => groupOf(id).source;
