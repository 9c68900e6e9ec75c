/** One column of a table of hours: a name that carries its unit, and a value a row. */
export interface CsvColumn {
  readonly name: string;
  readonly values: ArrayLike<number | string>;
}

/** Columns as CSV (RFC 4180, with plain line feeds), a head row first. Numbers to a millionth. */
export function csv(columns: readonly CsvColumn[]): string {
  const rows = Math.max(0, ...columns.map(({ values }) => values.length));
  const lines = [columns.map(({ name }) => cell(name)).join(",")];
  for (let i = 0; i < rows; i++) lines.push(columns.map(({ values }) => cell(values[i] ?? "")).join(","));
  return `${lines.join("\n")}\n`;
}

function cell(value: number | string): string {
  if (typeof value === "number") return String(Math.round(value * 1e6) / 1e6 + 0);
  // a spreadsheet would run a cell that begins so
  const harmless = /^[=+\-@\t\r]/u.test(value) ? `'${value}` : value;
  return /[",\r\n]/u.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
