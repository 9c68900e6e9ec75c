import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayChance, sayDays, sayDaysShort, sayMonth, sayRange } from "../paper/words.ts";
import type { YearPicture } from "./yearPicture.ts";

/** One row a setup and month. */
export function yearTable({ setups, horizon_days }: YearPicture, { locale }: FactOptions = {}): ChartTable {
  return {
    caption: "Round the year: the same trip begun in each month",
    columns: ["Setup", "Month", "Days, P10", "Days, median", "Days, P90", "Chance of lasting"],
    rows: setups.flatMap(({ name, months }) =>
      months.map(({ month, drawn, chance }) => [
        name,
        sayMonth(month, locale, "long"),
        ...[drawn.p10, drawn.p50, drawn.p90].map((days) => sayDaysShort(days, horizon_days, locale)),
        sayChance(chance, locale),
      ]),
    ),
  };
}

const rank = (days: number | null): number => days ?? Infinity;

function worst(
  { name, months }: YearPicture["setups"][number],
  horizon_days: number,
  locale: string | undefined,
): string {
  const ordered = [...months].sort((a, b) => rank(a.drawn.p50) - rank(b.drawn.p50));
  const [least, most] = [ordered[0], ordered.at(-1)];
  if (!least || !most) return `${name} has no months`;
  if (rank(least.drawn.p50) === rank(most.drawn.p50))
    return `${name} lasts ${sayDays(least.drawn.p50, horizon_days, locale)} in every month`;
  const said = (m: typeof least) =>
    `${sayDays(m.drawn.p50, horizon_days, locale)} in ${sayMonth(m.month, locale, "long")}`;
  return `${name} from ${said(least)} to ${said(most)}`;
}

/** The year in a sentence: each setup's worst month. */
export function yearSummary({ setups, horizon_days }: YearPicture, { locale }: FactOptions = {}): string {
  if (setups.length === 0) return "Round the year: no setup yet.";
  return `Round the year: ${setups.map((setup) => worst(setup, horizon_days, locale)).join("; ")}.`;
}

/** Each setup's days in one month. */
export function yearReadout(
  { setups, horizon_days }: YearPicture,
  month: number,
  { locale }: FactOptions = {},
): Readout {
  const lines = setups.flatMap(({ name, months }) =>
    months
      .filter((row) => row.month === month)
      .map(({ drawn, chance }) => ({
        name,
        value: `${sayDays(drawn.p50, horizon_days, locale)} (${sayRange(drawn.p10, drawn.p90, horizon_days, locale)}), chance ${sayChance(chance, locale)}`,
      })),
  );
  return { heading: sayMonth(month, locale, "long"), lines };
}
