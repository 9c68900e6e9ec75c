import type { ComparedSetup, Setup, SetupAnswer, WiringAnswer } from "@stayput/sim";
import type { Handover } from "../handover.ts";
import { bounded } from "../words/bounded.ts";

/** One setup with its answers, and the letter that stands for it on every page. */
export interface Option {
  /** by its place in the job, so that it keeps it where only some of the setups are printed */
  readonly letter: string;
  /** from 0, among those printed: its line style in the picture */
  readonly index: number;
  readonly name: string;
  readonly setup: Setup;
  readonly answer: SetupAnswer;
  readonly compared: ComparedSetup;
  readonly wired: WiringAnswer | null;
}

/** The setups that every answer knows, in the job's order. @throws RangeError where an answer of one is missing */
export const optionsOf = ({ job, study, explained, compared, wired }: Handover): Option[] =>
  study.setups.map((setup, index) => ({
    letter: letterAt(
      Math.max(
        index,
        job.setups.findIndex(({ id }) => id === setup.id),
      ),
    ),
    index,
    name: bounded(setup.name, 60),
    setup,
    answer: must(explained.setups, setup.id, "explained"),
    compared: must(compared.setups, setup.id, "compared"),
    wired: wired.find(({ id }) => id === setup.id) ?? null,
  }));

const letterAt = (place: number): string => String.fromCharCode(65 + place);

function must<T extends { readonly id: string }>(answers: readonly T[], id: string, name: string): T {
  const found = answers.find((answer) => answer.id === id);
  if (found === undefined) throw new RangeError(`${name} must hold an answer for setup "${id}", and does not`);
  return found;
}

/** Rows that say the same of several setups put together, with the letters of all of them. */
export interface Lettered<T> {
  readonly letters: readonly string[];
  readonly row: T;
}

/** Puts rows together that read alike; `alike` gives what is compared. Keeps the order in which they first came. */
export function gathered<T>(
  rows: readonly { readonly letter: string; readonly row: T }[],
  alike: (row: T) => string,
): Lettered<T>[] {
  const groups = new Map<string, { letters: string[]; row: T }>();
  for (const { letter, row } of rows) {
    const key = alike(row);
    const group = groups.get(key) ?? { letters: [], row };
    if (!group.letters.includes(letter)) group.letters.push(letter);
    groups.set(key, group);
  }
  return [...groups.values()];
}
