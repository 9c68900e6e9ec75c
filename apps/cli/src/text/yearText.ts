import type { YearAnswer } from "@stayput/sim";
import { titled, type Of } from "./headAndFoot.ts";
import { assumedOf } from "./grouped.ts";
import { heading, lettered, letterOf } from "./heading.ts";
import { chanceCell, count, daysCell, listed, monthName, percent } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table } from "./table.ts";
import { item, wrap } from "./wrap.ts";

type Setup = YearAnswer["setups"][number];
type Month = Setup["months"][number];

interface Sheet extends Of {
  readonly nights: number;
  /** chance that is called good enough */
  readonly asked: number;
  readonly answer: YearAnswer;
  readonly seed: number;
  readonly draws: number;
  readonly horizon_days: number;
  readonly assumed: readonly string[];
}

/** The trip begun in each month, for a terminal of 80 columns: the good months of each setup, then every month. */
export function yearText(sheet: Sheet): string {
  const { answer, nights, draws, horizon_days } = sheet;
  const { setups } = answer;
  const days = (of: (month: Month) => Month["average"]) => months(setups, (month) => daysCell(of(month), horizon_days));
  const sections = [
    wrap(
      `${titled(sheet, nights).join(" ")} Here the trip begins in each month in turn; good is a chance of ${percent(sheet.asked)} or more of lasting it.`,
    ),
    ...setups.map((setup, i) => wrap(`${plain(setup.name, 60)}: ${goodMonths(setup, sheet)}`, lettered(i))),
    [
      heading(`Chance of lasting ${count(nights, "night")} as travelled`, "by month of arrival"),
      ...months(setups, ({ chance }) => chanceCell(chance, draws)),
    ],
    [heading("Days until flat, parked", "middle sky (P50)"), ...days(({ drawn }) => drawn.p50)],
    [heading("Days until flat, parked", "dullest tenth of skies (P10)"), ...days(({ drawn }) => drawn.p10)],
    [heading("Taken as given"), ...assumedOf(sheet.assumed, setups), ...item(standing(sheet))],
  ];
  return `${sections.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

/** In which months the chance is good enough, and which month is worst, or best where none is. */
function goodMonths({ months: all }: Setup, { asked, draws }: Sheet): string {
  const good = all.filter(({ chance }) => chance >= asked).map(({ month }) => month);
  const byChance = all.toSorted((a, b) => a.chance - b.chance);
  const [worst, best] = [byChance[0]!, byChance.at(-1)!];
  const named = ({ month, chance }: Month): string => `${monthName(month)}, ${chanceCell(chance, draws)}`;
  const when = good.length === 12 ? "all year round" : good.length === 0 ? "in no month" : listed(spans(good));
  if (worst.chance === best.chance) return `good ${when}; ${chanceCell(best.chance, draws)} in every month.`;
  if (good.length === 0) return `good ${when}; best in ${named(best)}.`;
  return `good ${when}; worst in ${named(worst)}.`;
}

/** Months in the order of the year as spans, which may run past December: "from September to April". */
export function spans(months: readonly number[]): string[] {
  const next = (month: number): number => (month % 12) + 1;
  const before = (month: number): number => ((month + 10) % 12) + 1;
  const ends = (from: number): number => {
    let to = from;
    while (months.includes(next(to)) && next(to) !== from) to = next(to);
    return to;
  };
  return months
    .filter((month) => !months.includes(before(month)))
    .map((from) =>
      ends(from) === from ? `in ${monthName(from)}` : `from ${monthName(from)} to ${monthName(ends(from))}`,
    );
}

const ACROSS = 8; // setups that have room side by side

/** A row a month, a column a setup; further setups below. */
function months(setups: readonly Setup[], cell: (month: Month) => string): string[] {
  const rows = Array.from({ length: Math.ceil(setups.length / ACROSS) }, (_, i) => i * ACROSS);
  return rows.flatMap((first) => {
    const shown = setups.slice(first, first + ACROSS);
    const columns = [
      { head: "", align: "left" as const },
      ...shown.map((_, i) => ({ head: letterOf(first + i), align: "right" as const })),
    ];
    const cells = Array.from({ length: 12 }, (_, i) => [
      monthName(i + 1),
      ...shown.map(({ months: all }) => cell(all[i]!)),
    ]);
    return table(columns, cells);
  });
}

const standing = ({ draws, seed, horizon_days }: Sheet): string =>
  `Estimate for planning, not a promise: ${count(draws, "drawn sky", "drawn skies")} in each month, seed ${seed}, up to ${horizon_days} days; loads, shade and drives as in the job, whatever the month.`;
