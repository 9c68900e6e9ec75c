import stringWidth from "string-width";

export interface Column {
  readonly head: string;
  /** numbers stand at the right */
  readonly align: "left" | "right";
}

/** Rows under a head, padded to the widest of each column, two spaces between; no rules, no colour. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const heads = columns.map((column) => column.head.split("\n"));
  const tallest = Math.max(...heads.map((lines) => lines.length));
  const headRows = Array.from({ length: tallest }, (_, i) =>
    heads.map((lines) => lines[i - (tallest - lines.length)] ?? ""),
  );
  const all = [...headRows, ...rows];
  const widths = columns.map((_, c) => Math.max(...all.map((row) => stringWidth(row[c] ?? ""))));
  return all.map((row) =>
    columns
      .map(({ align }, c) => pad(row[c] ?? "", widths[c] ?? 0, align))
      .join("  ")
      .trimEnd(),
  );
}

/** Text filled with spaces to a width. */
export function pad(text: string, width: number, align: Column["align"]): string {
  const spaces = " ".repeat(Math.max(0, width - stringWidth(text)));
  return align === "left" ? text + spaces : spaces + text;
}
