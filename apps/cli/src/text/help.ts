import { optionTable } from "../options.ts";
import type { Verb } from "../verbs/verb.ts";
import { table } from "./table.ts";

const plainColumns = [
  { head: "", align: "left" },
  { head: "", align: "left" },
] as const;

/** Two columns without a head, set in by two. */
const listed = (rows: readonly (readonly string[])[]): string[] =>
  table(plainColumns, rows)
    .slice(1)
    .map((line) => `  ${line}`);

const flag = (name: keyof typeof optionTable): string => {
  const { value } = optionTable[name];
  return value === null ? `--${name}` : `--${name} ${value}`;
};

/** The page that `--help` prints, and that a command without a verb gets. */
export function help(verbs: readonly Verb[]): string {
  const lines = [
    "stayput: how long a camp's battery lasts, why, and what would fix it",
    "",
    "  stayput VERB JOB.json [options]      JOB may be - for standard input",
    "",
    ...listed(verbs.map(({ name, answers }) => [name, answers])),
    "",
    "  stayput VERB --help says what a verb takes.",
    "",
    "Exit: 0 done, 1 the job is invalid (faults on standard error), 2 misuse.",
  ];
  return `${lines.join("\n")}\n`;
}

/** The page of one verb. */
export function verbHelp(verb: Verb): string {
  const lines = [
    `stayput ${verb.name} ${verb.operands} [options]`,
    `  ${verb.answers}`,
    "",
    ...listed(verb.options.map((name) => [flag(name), verb.means?.[name] ?? optionTable[name].help])),
  ];
  return `${lines.join("\n")}\n`;
}
