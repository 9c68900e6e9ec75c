import { Misuse } from "./faults.ts";

/** Options that verbs share, one row each. A verb names those it takes. */
export const optionTable = {
  json: { value: null, help: "print one JSON document" },
  setup: { value: "ID", help: "only this setup" },
  month: { value: "1-12", help: "as if the trip began in this month" },
  seed: { value: "N", help: "seed of the drawn skies (1)" },
  draws: { value: "N", help: "how many skies are drawn (200)" },
  skies: { value: "FILE", help: "skies from CSV instead: a row a sky, daily clearness 0 to 1" },
  limit: { value: "N", help: "at most so many rows (10)" },
} as const;

export type OptionName = keyof typeof optionTable;

export interface Options {
  readonly json: boolean;
  readonly setup: string | null;
  readonly month: number | null;
  readonly seed: number;
  readonly draws: number | null;
  readonly skies: string | null;
  readonly limit: number;
}

type Given = Readonly<Record<string, string | boolean | undefined>>;

/** Options as typed, checked and with their defaults. */
export function readOptions(given: Given): Options {
  const text = (name: OptionName): string | null => (typeof given[name] === "string" ? given[name] : null);
  const whole = (name: OptionName, least: number, most: number): number | null =>
    wholeNumber(name, text(name), least, most);
  return {
    json: given["json"] === true,
    setup: text("setup"),
    month: whole("month", 1, 12),
    seed: whole("seed", 0, 2 ** 32 - 1) ?? 1,
    draws: whole("draws", 10, 5000),
    skies: text("skies"),
    limit: whole("limit", 1, 1000) ?? 10,
  };
}

function wholeNumber(name: OptionName, given: string | null, least: number, most: number): number | null {
  if (given === null) return null;
  const value = /^\d{1,10}$/.test(given) ? Number(given) : NaN;
  if (value >= least && value <= most) return value;
  const shown = JSON.stringify(given.slice(0, 40));
  throw new Misuse(`--${name}: ${shown} was given; accepted is a whole number from ${least} to ${most}`);
}
