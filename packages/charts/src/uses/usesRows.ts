import { finite, sum } from "../paper/numbers.ts";
import type { UseRow, UsesPicture } from "./usesPicture.ts";

const most = 12;

/** Rows in order of size, the smallest put together past twelve. */
export function usesRows({ rows }: UsesPicture): UseRow[] {
  rows.forEach((row) => finite(`Wh_day of ${row.id}`, row.Wh_day));
  const ranked = [...rows].sort((a, b) => b.Wh_day - a.Wh_day);
  if (ranked.length <= most) return ranked;
  const rest = ranked.slice(most - 1);
  return [
    ...ranked.slice(0, most - 1),
    { id: "others", name: `${rest.length} others`, Wh_day: sum(rest.map((row) => row.Wh_day)) },
  ];
}
