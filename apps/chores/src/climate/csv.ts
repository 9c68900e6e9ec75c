/** Rows of a comma-separated text by the names in its first line; a field in double quotes may hold commas. */
export function csvRows(text: string): Record<string, string>[] {
  const [header, ...lines] = text.trim().split(/\r?\n/).map(fields);
  return lines.map((line) => {
    if (line.length !== header!.length) throw new Error(`expected ${header!.length} fields, got: ${line.join(",")}`);
    return Object.fromEntries(header!.map((name, i) => [name, line[i]!]));
  });
}

function fields(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((m) => m[1]?.replaceAll('""', '"') ?? m[2]!);
}

/** The twelve months of `prefix` as numbers, January first; null when any is blank. */
export function months(row: Record<string, string>, prefix: string): number[] | null {
  const cells = Array.from({ length: 12 }, (_, m) => row[`${prefix}${m + 1}`] ?? "");
  if (cells.some((cell) => cell === "")) return null;
  return cells.map((cell) => finite(cell, prefix));
}

export function finite(cell: string | undefined, what: string): number {
  const value = Number(cell);
  if (cell === undefined || cell === "" || !Number.isFinite(value)) throw new Error(`${what}: not a number: "${cell}"`);
  return value;
}
