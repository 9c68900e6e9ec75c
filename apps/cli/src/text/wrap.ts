import stringWidth from "string-width";
import { cut } from "./cut.ts";

/** The widest line of text output, in columns. */
export const WIDTH = 80;

/** A paragraph broken between words at 80 columns, a figure kept with its percent sign; lines after the first are set in by `hang` spaces. */
export function wrap(paragraph: string, { first = "", hang = 0 } = {}): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of paragraph
    .split(/\s+(?!%)/u)
    .flatMap((long) => pieces(long, WIDTH - Math.max(hang, first.length)))) {
    if (!empty && stringWidth(line) + 1 + stringWidth(word) > WIDTH) {
      lines.push(line);
      line = " ".repeat(hang);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}

/** A word in pieces that fit on a line; most are one piece, and an empty word is none. */
function pieces(word: string, widest: number): string[] {
  if (word === "") return [];
  const piece = cut(word, widest);
  return [piece, ...pieces(word.slice(piece.length), widest)];
}

/** An item of a list: a dash, and the rest set in under it. */
export const item = (text: string): string[] => wrap(text, { first: "- ", hang: 2 });
