import { isDeepStrictEqual } from "node:util";
import type { ChargeRunAnswer, FridgeRunAnswer, RunAnswer, WiringAnswer } from "@stayput/sim";
import { titled, type Of } from "./headAndFoot.ts";
import { assumedOf, capital, grouped } from "./grouped.ts";
import { heading, letterOf } from "./heading.ts";
import { percent } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { item } from "./wrap.ts";

interface Sheet extends Of {
  readonly nights: number;
  /** with each its place among the job's setups, which gives its letter */
  readonly answers: readonly { readonly at: number; readonly answer: WiringAnswer }[];
  readonly assumed: readonly string[];
}

/** The wiring of each setup for a terminal of 80 columns, and once for all: the loom, safety, which standard covers what. */
export function wiringText(sheet: Sheet): string {
  const answers = sheet.answers.map(({ answer }) => answer);
  const letters = sheet.answers.map(({ at }) => letterOf(at));
  const cautions = grouped(
    answers.map((answer) => answer.cautions.map(({ text }) => text)),
    letters,
  );
  const sections = [
    titled(sheet, sheet.nights),
    cautions.length === 0 ? [] : [heading("Look at these first"), ...cautions],
    ...sheet.answers.flatMap(({ at, answer }, i) => ofSetup(answer, letterOf(at), sheet.answers.slice(0, i))),
    listed("While the loom is open", answers.flatMap(loom)),
    listed("Safety", answers.flatMap(safetyRows)),
    listed("Which standard covers what", standardsByStanding(answers)),
    [
      heading("Taken as given"),
      ...assumedOf(sheet.assumed, answers, letters),
      ...item("Estimate for planning; local rules and the makers' manuals come first."),
    ],
  ];
  const said = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${said.join("\n\n")}\n`;
}

const loom = ({ checklist }: WiringAnswer): string[] =>
  checklist.map(({ item: what, reason, standing }) => `${what}. ${reason} (${standing})`);

const safetyRows = ({ safety }: WiringAnswer): string[] =>
  safety.map(({ where, text, standing }) => `${capital(where)}: ${text} (${standing})`);

/** Standards that stand alike, said together. */
function standardsByStanding(answers: readonly WiringAnswer[]): string[] {
  const rows = answers.flatMap(({ standards }) => standards);
  const standings = [...new Set(rows.map(({ standing }) => standing))];
  return standings.map((standing) => {
    const named = rows.filter((row) => row.standing === standing).map(({ name, covers }) => `${name} for ${covers}`);
    return `${capital(standing)}: ${[...new Set(named)].join("; ")}.`;
  });
}

/** A headed list, each line once. */
function listed(head: string, lines: readonly string[]): string[] {
  const once = [...new Set(lines)].map((line) => plain(line, 2000));
  return once.length === 0 ? [] : [heading(head), ...once.flatMap(item)];
}

/** One setup's runs; a charge run like that of a setup before it is not told again. */
function ofSetup(
  { name, charge, others, fridges }: WiringAnswer,
  letter: string,
  before: Sheet["answers"],
): string[][] {
  const head = heading("Wiring", `${letter}  ${plain(name, 50)}`);
  const twin = charge === null ? undefined : before.find(({ answer }) => isDeepStrictEqual(answer.charge, charge));
  const runs = [...others, ...fridges];
  return [
    [head, ...onTheRoad(charge, twin).flatMap(item)],
    ...(charge === null || twin !== undefined ? [] : [voltsAlong(charge), ampsDelivered(charge)]),
    runs.length === 0 ? [] : otherRuns(runs),
    runs.flatMap(({ name: run, sentences }) =>
      sentences.slice(0, 1).flatMap((said) => item(said.startsWith(run) ? said : `${run}: ${said}`)),
    ),
  ].filter((lines) => lines.length > 0);
}

function onTheRoad(charge: ChargeRunAnswer | null, twin: { readonly at: number } | undefined): readonly string[] {
  if (charge === null) return ["Nothing charges the bank on the road."];
  return twin === undefined ? charge.sentences : [`The charge run is that of ${letterOf(twin.at)}.`];
}

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

/** Volts at each point at the start of a charge. */
function voltsAlong({ points }: ChargeRunAnswer): string[] {
  const rows = points.map((point) => [
    plain(point.name, 44),
    point.volts_V.toFixed(2),
    point.amps_A.toFixed(1),
    point.heat_W < 0.05 ? "" : point.heat_W.toFixed(0),
  ]);
  return table([left("along the charge run"), right("volts"), right("amps"), right("lost, W")], rows);
}

/** What reaches the bank as it fills, and what holds it. */
function ampsDelivered({ moments }: ChargeRunAnswer): string[] {
  const columns = [
    left("bank\nat"),
    right("source\nV"),
    right("into the\nbank, A"),
    left("held by"),
    right("without it\nmore, A"),
  ];
  const rows = moments.map(({ charge, source_V, delivered_A, limit, gain_A }) => [
    percent(charge),
    source_V.toFixed(1),
    delivered_A.toFixed(1),
    plain(limit.name, 36),
    gain_A < 0.05 ? "" : gain_A.toFixed(gain_A < 9.95 ? 1 : 0),
  ]);
  return table(columns, rows);
}

/** The other runs, a row each. */
function otherRuns(runs: readonly (RunAnswer | FridgeRunAnswer)[]): string[] {
  const columns = [left("other runs"), right("m"), right("amps"), right("for 3 %"), right("for 5 %"), right("fuse, A")];
  const rows = runs.map((run) => [
    plain(run.name, 34),
    `${run.given ? "" : "~"}${run.length_m.toFixed(1)}`,
    run.running_A.toFixed(1),
    sizeFor(run, "3 % drop"),
    sizeFor(run, "5 % drop"),
    run.fuses[0]?.rated_A?.toString() ?? "none fits",
  ]);
  return [...table(columns, rows), "~ is a usual length, where the job gives none."];
}

function sizeFor({ sizes }: RunAnswer, purpose: string): string {
  const size = sizes.find((one) => one.purpose === purpose);
  if (size === undefined) return "";
  return size.standard_mm2 === null ? "nothing" : `${size.standard_mm2} mm²`;
}
