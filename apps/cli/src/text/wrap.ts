import stringWidth from "string-width";

/** The widest line of text output, in columns. */
export const WIDTH = 80;

/** A paragraph broken between words at 80 columns; lines after the first are set in by `hang` spaces. */
export function wrap(paragraph: string, { first = "", hang = 0, width = WIDTH } = {}): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of paragraph.split(/\s+/u).filter((part) => part !== "")) {
    if (!empty && stringWidth(line) + 1 + stringWidth(word) > width) {
      lines.push(line);
      line = " ".repeat(hang);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}

/** An item of a list: a dash, and the rest set in under it. */
export const item = (text: string): string[] => wrap(text, { first: "- ", hang: 2 });
