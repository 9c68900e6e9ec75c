import leven from "leven";

/** How well typed words meet a row, best first. */
export const matches = { start: 0, wordStart: 1, inside: 2, near: 3, none: Infinity } as const;

/**
 * How well `typed` meets `title`, or failing that the `others` (codes, other names), all of them already folded:
 * start of the title or one of the others whole, start of a word, anywhere inside, nearly so spelt. Several words typed must all be met.
 */
export function match(typed: string, title: string, others: readonly string[] = []): number {
  const whole = matchOne(typed, title, others);
  const words = typed.split(" ");
  if (whole < matches.near || words.length === 1) return whole;
  return Math.max(...words.map((word) => matchOne(word, title, others)));
}

function matchOne(typed: string, title: string, others: readonly string[]): number {
  if (title.startsWith(typed) || others.includes(typed)) return matches.start;
  const texts = [title, ...others];
  if (texts.some((text) => ` ${text}`.includes(` ${typed}`))) return matches.wordStart;
  if (typed.length >= 3 && texts.some((text) => text.includes(typed))) return matches.inside;
  return texts.some((text) => nearlyStarts(typed, text)) ? matches.near : matches.none;
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

/** Rows in order of how well they match, those that do not match left out; equals keep the order they came in. */
export function ranked<T>(rows: readonly T[], score: (row: T) => number): T[] {
  return rows
    .map((row) => ({ row, score: score(row) }))
    .filter((entry) => entry.score < matches.none)
    .sort((a, b) => a.score - b.score)
    .map((entry) => entry.row);
}
