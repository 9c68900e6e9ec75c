/** How a field's text stands for a value of the job, and back. */
export type FieldKind = "number" | "percent" | "clock" | "text";

const decimal = (1.5).toLocaleString().charAt(1);
const tidy = (value: number): number => Number(value.toPrecision(10));

/** A plain number in the reader's way of writing, or null. */
function plainNumber(text: string): number | null {
  if (!/^[-+−]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text)) return null;
  return Number(text.replace("−", "-").replace(",", "."));
}

/** "9", "9:30", "9h30", "0930" and "9.5" as decimal hours, or null. */
export function clockHour(text: string): number | null {
  const four = /^([01]\d|2[0-4])([0-5]\d)$/.exec(text);
  if (four !== null) return Number(four[1]) + Number(four[2]) / 60;
  const parts = /^(\d{1,2})\s*[:h.]\s*([0-5]\d)$/.exec(text);
  if (parts !== null && !text.includes(".")) return Number(parts[1]) + Number(parts[2]) / 60;
  return plainNumber(text.replace(/\s*h$/, ""));
}

/**
 * What is typed, as the job keeps it: a number where it is one, else the text itself, for the job's reader of words
 * ("3 A") to take or to refuse. Nothing typed leaves the field out, so that its default holds.
 */
export function readTyped(kind: FieldKind, typed: string): unknown {
  const text = typed.trim();
  if (kind === "text") return typed;
  if (text === "") return undefined;
  if (kind === "clock") return clockHour(text) ?? text;
  const number = plainNumber(text);
  if (number === null) return text;
  return kind === "percent" ? tidy(number / 100) : number;
}

/** A value of the job as the field shows it. */
export function shown(kind: FieldKind, value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value !== "number") return typeof value === "string" ? value : JSON.stringify(value);
  if (kind === "clock") return clockText(value);
  return String(kind === "percent" ? tidy(value * 100) : tidy(value)).replace(".", decimal);
}

export function clockText(hour: number): string {
  const minutes = Math.round(hour * 60);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** What a fault says is accepted, in the field's own terms: percent for shares, the clock for hours. */
export function acceptedIn(kind: FieldKind, accepted: string): string {
  const orNothing = accepted.replace(/, or null$/, "");
  if (orNothing !== accepted) return `${acceptedIn(kind, orNothing)}; or nothing`;
  const range = /^a number from (\S+) to (\S+) \((share|clock hour)\)$/.exec(accepted);
  if (range === null) return accepted;
  const [low, high] = [Number(range[1]), Number(range[2])];
  if (kind === "percent") return `${tidy(low * 100)} to ${tidy(high * 100)} %`;
  if (kind === "clock") return `a time from ${clockText(low)} to ${clockText(high)}, such as 18:30`;
  return accepted;
}
