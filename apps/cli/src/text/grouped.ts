import { letterOf } from "./heading.ts";
import { plain } from "./plain.ts";
import { item } from "./wrap.ts";

const LONGEST = 600;

/** What is said of each of some setups as a list: each text once, behind the letters of those that it is said of. */
export function grouped(saidOf: readonly (readonly string[])[], letters = saidOf.map((_, i) => letterOf(i))): string[] {
  const of = new Map<string, string[]>();
  saidOf.forEach((texts, i) => {
    for (const text of new Set(texts)) of.set(text, [...(of.get(text) ?? []), letters[i] ?? ""]);
  });
  return [...of].flatMap(([text, whose]) =>
    item(saidOf.length === 1 ? plain(text, LONGEST) : `${whose.join(", ")}: ${plain(text, LONGEST)}`),
  );
}

interface Named {
  readonly name: string;
}

/** What was assumed: of the job as it stands, of setups once for all that share it, by their letters. */
export function assumedOf(
  notes: readonly string[],
  setups: readonly Named[],
  letters = setups.map((_, i) => letterOf(i)),
): string[] {
  const whose = (note: string): Named | undefined =>
    setups.filter(({ name }) => note.startsWith(`${name}: `)).toSorted((a, b) => b.name.length - a.name.length)[0];
  const general = notes.filter((note) => whose(note) === undefined).flatMap((note) => item(plain(note, LONGEST)));
  const saidOf = setups.map((setup) =>
    notes.filter((note) => whose(note) === setup).map((note) => capital(note.slice(setup.name.length + 2))),
  );
  return [...grouped(saidOf, letters), ...general];
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
