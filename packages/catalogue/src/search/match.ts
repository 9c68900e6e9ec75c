import leven from "leven";

/** How well typed words meet a row, best first. */
export const matches = { start: 0, wordStart: 1, inside: 2, near: 3, none: Infinity } as const;

/** What a row is searched by, folded: its title, and others such as codes and other names. */
export interface Searched {
  readonly title: string;
  readonly others: readonly string[];
}

/**
 * Rows that meet what is typed, best first: start of the title or one of the others whole, start of a word, anywhere
 * inside; where none does, those nearly so spelt. Several words typed must all be met. Equals keep the order given.
 */
export function search<T extends Searched>(rows: readonly T[], typed: string): T[] {
  const found = ranked(rows, (row) => match(typed, row, matchOne));
  return found.length > 0 ? found : ranked(rows, (row) => match(typed, row, matchNearly));
}

type MatchWord = (typed: string, row: Searched) => number;

function match(typed: string, row: Searched, one: MatchWord): number {
  const whole = one(typed, row);
  const words = typed.split(" ");
  if (whole < matches.none || words.length === 1) return whole;
  return Math.max(...words.map((word) => one(word, row)));
}

function matchOne(typed: string, { title, others }: Searched): number {
  if (title.startsWith(typed) || others.includes(typed)) return matches.start;
  const texts = [title, ...others];
  if (texts.some((text) => ` ${text}`.includes(` ${typed}`))) return matches.wordStart;
  return typed.length >= 3 && texts.some((text) => text.includes(typed)) ? matches.inside : matches.none;
}

function matchNearly(typed: string, row: Searched): number {
  const exact = matchOne(typed, row);
  if (exact < matches.none) return exact;
  return [row.title, ...row.others].some((text) => nearlyStarts(typed, text)) ? matches.near : matches.none;
}

/** Whether a word of `text`, cut to about what is typed so far, is within one slip of it, two from seven letters on. */
function nearlyStarts(typed: string, text: string): boolean {
  if (typed.length < 4) return false;
  const slips = typed.length < 7 ? 1 : 2;
  const cuts = [typed.length - 1, typed.length, typed.length + 1];
  return starts(text).some((start) => cuts.some((cut) => leven(typed, start.slice(0, cut)) <= slips));
}

/** The text from each of its words on. */
function starts(text: string): string[] {
  const words = text.split(" ");
  return words.map((_, at) => words.slice(at).join(" "));
}

/** Rows in order of their score, lowest first, those without a finite one left out; equals keep the order given. */
export function ranked<T>(rows: readonly T[], score: (row: T) => number): T[] {
  return rows
    .map((row) => ({ row, score: score(row) }))
    .filter((entry) => entry.score < matches.none)
    .sort((a, b) => a.score - b.score)
    .map((entry) => entry.row);
}
