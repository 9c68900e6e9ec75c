import { sum } from "../paper/numbers.ts";
import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayDays, sayDaysShort, sayNumber, sayPercent, sayWh } from "../paper/words.ts";
import type { UseRow, UsesPicture } from "./usesPicture.ts";
import { usesRows } from "./usesRows.ts";

const total_Wh = (rows: readonly UseRow[]): number => sum(rows.map((row) => row.Wh_day));
const share = (row: UseRow, rows: readonly UseRow[]): number => (total_Wh(rows) > 0 ? row.Wh_day / total_Wh(rows) : 0);

/** Every row, none put together. */
export function usesTable(picture: UsesPicture, { locale, format }: FactOptions = {}): ChartTable {
  const rows = [...picture.rows].sort((a, b) => b.Wh_day - a.Wh_day);
  return {
    caption: `Where it goes: ${picture.setup}, ${sayDays(picture.days, picture.horizon_days, locale)} as it is`,
    columns: ["Load", "Wh a day", "Share, losses counted", "Days without it"],
    rows: rows.map((row) => [
      row.name,
      format ? format(row.Wh_day) : sayNumber(row.Wh_day, locale),
      sayPercent(share(row, rows), locale),
      row.without_days === undefined ? "–" : sayDaysShort(row.without_days, picture.horizon_days, locale),
    ]),
  };
}

/** Where it goes, in a sentence: the largest use and the total. */
export function usesSummary(picture: UsesPicture, { locale, format }: FactOptions = {}): string {
  const say = format ?? ((value: number) => sayWh(value, locale));
  const rows = usesRows(picture);
  const [most] = rows;
  if (!most) return "Where it goes: no loads yet.";
  const without =
    most.without_days === undefined
      ? ""
      : `; without it ${sayDays(most.without_days, picture.horizon_days, locale)} instead of ${sayDays(picture.days, picture.horizon_days, locale)}`;
  return `Where it goes: ${most.name} takes most, ${say(most.Wh_day)} of ${say(total_Wh(rows))} a day${without}.`;
}

/** One row's figures. */
export function usesReadout(picture: UsesPicture, index: number, { locale, format }: FactOptions = {}): Readout {
  const rows = usesRows(picture);
  const row = rows[index];
  if (!row) return { heading: "", lines: [] };
  const days =
    row.without_days === undefined
      ? []
      : [{ name: "Days without it", value: sayDays(row.without_days, picture.horizon_days, locale) }];
  return {
    heading: row.name,
    lines: [
      { name: "A day", value: format ? format(row.Wh_day) : sayWh(row.Wh_day, locale) },
      { name: "Share, losses counted", value: sayPercent(share(row, rows), locale) },
      ...days,
    ],
  };
}
