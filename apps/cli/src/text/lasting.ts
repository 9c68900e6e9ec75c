import type { Autonomy, ExplainAnswer, SetupAnswer } from "@stayput/sim";
import { letterOf } from "./heading.ts";
import { chanceCell, count, daysCell } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";

/** What `explain` and `compare` both say of how long setups last. */
interface Lasting extends Pick<ExplainAnswer, "draws" | "horizon_days" | "nights"> {
  readonly setups: readonly Pick<SetupAnswer, "name" | "days" | "reserveDays" | "chanceOfLasting">[];
}

/** How long each setup lasts: a row for each until flat, and the same down to its reserve. */
export function lasting(answer: Lasting): string[] {
  const columns: Column[] = [
    { head: "", align: "left" },
    { head: "days until flat, parked", align: "left" },
    ...["no\nsun", "average\nsky", "P10", "P50", "P90"].map((head): Column => ({ head, align: "right" })),
    { head: `lasts\n${count(answer.nights, "night")}`, align: "right" },
  ];
  const cells = ({ dark, average, drawn }: Autonomy): string[] =>
    [dark, average, drawn.p10, drawn.p50, drawn.p90].map((days) => daysCell(days, answer.horizon_days));
  const rows = answer.setups.flatMap((setup, i) => [
    [letterOf(i), plain(setup.name, 28), ...cells(setup.days), chanceCell(setup.chanceOfLasting, answer.draws)],
    ["", "  down to its reserve", ...cells(setup.reserveDays), ""],
  ]);
  return table(columns, rows);
}
