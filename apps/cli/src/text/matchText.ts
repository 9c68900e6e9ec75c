import type { MatchAnswer, MatchExplanation } from "@stayput/sim";
import { titled, type Of } from "./headAndFoot.ts";
import { assumedOf } from "./grouped.ts";
import { heading } from "./heading.ts";
import { count, dateSaid, percent } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { item, wrap } from "./wrap.ts";

interface Sheet extends Of {
  readonly nights: number;
  readonly setup: string;
  readonly seen: readonly { readonly flatOnMorning: number; readonly month: number; readonly day: number }[];
  readonly answer: MatchAnswer;
  readonly draws: number;
  readonly assumed: readonly string[];
}

/** What would explain what was seen, for a terminal of 80 columns. */
export function matchText(sheet: Sheet): string {
  const { answer, seen } = sheet;
  const sections = [
    titled(sheet, sheet.nights),
    wrap(answer.said),
    [heading("What was seen", plain(sheet.setup, 50)), ...seen.flatMap((one) => item(`${mornings(one)}.`))],
    [heading("What would explain it, each alone"), ...explanations(answer.explanations)],
    [heading("Taken as given"), ...assumedOf(sheet.assumed, [{ name: sheet.setup }]), ...item(method(sheet.draws))],
  ];
  return `${sections.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

const mornings = ({ flatOnMorning, month, day }: Sheet["seen"][number]): string =>
  `Flat on morning ${flatOnMorning} after arriving on ${dateSaid(month, day)}, and not before`;

const method = (draws: number): string =>
  `Estimate for planning: every value in an even spread is weighed by how often, under ${count(draws, "sky", "skies")}, it happens as seen.`;

function explanations(all: readonly MatchExplanation[]): string[] {
  const columns: Column[] = [
    { head: "", align: "left" },
    { head: "as the job\nsays", align: "right" },
    { head: "would\nexplain it", align: "right" },
    { head: "19 in 20", align: "right" },
    { head: "weight of\neach", align: "right" },
  ];
  const rows = all.map((one) => [
    plain(one.name, 34),
    value(one.id, one.stated),
    one.likely === null ? "nothing" : value(one.id, one.likely.middle),
    one.likely === null ? "" : `${value(one.id, one.likely.low)} to ${value(one.id, one.likely.high)}`,
    percent(one.plausibility),
  ]);
  return table(columns, rows);
}

/** A fridge's use is told as a multiple of its rating, the others as shares. */
const value = (id: MatchExplanation["id"], of: number): string =>
  id === "fridge" ? `${of.toFixed(1)} ×` : percent(of);
