import type { ChemistryId } from "@stayput/sim";
import { Misuse } from "./faults.ts";

/** Options that verbs share, one row each. A verb names those it takes. */
export const optionTable = {
  json: { value: null, help: "print one JSON document" },
  lines: { value: null, help: "a job a line in, a JSON document or its faults a line out" },
  progress: { value: null, help: "tell how far long work is, on standard error" },
  setup: { value: "ID", help: "only this setup" },
  to: { value: "ID", help: "the setup proposed (the second)" },
  month: { value: "1-12", help: "as if the trip began in this month" },
  seed: { value: "N", help: "seed of the drawn skies (1)" },
  draws: { value: "N", help: "how many skies are drawn (200)" },
  skies: { value: "FILE", help: "skies from CSV instead: a row a sky, daily clearness 0 to 1" },
  nights: { value: "N", help: "nights to last (the trip's)" },
  chance: { value: "P", help: "chance asked, 0.9 or 90% (the job's, or 0.9)" },
  months: { value: "6-8", help: "months it must hold in, as 6-8 or 6,7,8 (that of arrival)" },
  chemistry: { value: "NAME", help: "agm, gel, flooded or lfp; several with commas (agm,lfp)" },
  limit: { value: "N", help: "at most so many rows (10)" },
  out: { value: "FILE", help: "write to this file, unless it holds something" },
  replace: { value: null, help: "write over the file of --out" },
  logo: { value: "FILE", help: "the workshop's own mark: PNG, JPEG or SVG, up to 200 kB" },
  date: { value: "YYYY-MM-DD", help: "the day printed on it (today)" },
  locale: { value: "TAG", help: "how figures and dates read, as de or en-ZA (the machine's)" },
} as const;

export type OptionName = keyof typeof optionTable;

export interface Options {
  readonly json: boolean;
  readonly lines: boolean;
  readonly progress: boolean;
  readonly setup: string | null;
  readonly to: string | null;
  readonly month: number | null;
  readonly seed: number;
  readonly draws: number | null;
  readonly skies: string | null;
  readonly nights: number | null;
  readonly chance: number | null;
  readonly months: readonly number[] | null;
  readonly chemistry: readonly ChemistryId[] | null;
  readonly limit: number;
  readonly out: string | null;
  readonly replace: boolean;
  readonly logo: string | null;
  readonly date: string | null;
  readonly locale: string | null;
}

type Given = Readonly<Record<string, string | boolean | undefined>>;

/** Options as typed, checked and with their defaults. */
export function readOptions(given: Given): Options {
  const text = (name: OptionName): string | null => (typeof given[name] === "string" ? given[name] : null);
  const whole = (name: OptionName, least: number, most: number): number | null =>
    wholeNumber(name, text(name), least, most);
  return {
    json: given["json"] === true,
    lines: given["lines"] === true,
    progress: given["progress"] === true,
    setup: text("setup"),
    to: text("to"),
    month: whole("month", 1, 12),
    seed: whole("seed", 0, 2 ** 32 - 1) ?? 1,
    draws: whole("draws", 1, 5000),
    skies: fileName("skies", text("skies")),
    nights: whole("nights", 1, 60),
    chance: readChance(text("chance")),
    months: readMonths(text("months")),
    chemistry: readChemistries(text("chemistry")),
    limit: whole("limit", 1, 1000) ?? 10,
    out: fileName("out", text("out")),
    replace: given["replace"] === true,
    logo: fileName("logo", text("logo")),
    date: readDate(text("date")),
    locale: readLocale(text("locale")),
  };
}

function wholeNumber(name: OptionName, given: string | null, least: number, most: number): number | null {
  if (given === null) return null;
  const value = /^\d{1,10}$/.test(given) ? Number(given) : NaN;
  if (value >= least && value <= most) return value;
  throw misread(name, given, `a whole number from ${least} to ${most}`);
}

/** An empty name is what a shell makes of a variable that is not set. */
function fileName(name: OptionName, given: string | null): string | null {
  if (given === "") throw misread(name, given, "the name of a file");
  return given;
}

const misread = (name: OptionName, given: string, accepted: string): Misuse =>
  new Misuse(`--${name}: ${JSON.stringify(given.slice(0, 40))} was given; accepted is ${accepted}`);

function readChance(given: string | null): number | null {
  if (given === null) return null;
  const [, digits, sign] = /^(\d{1,3}(?:\.\d{1,6})?)\s*(%?)$/.exec(given) ?? [];
  const chance = Number(digits) / (sign === "%" ? 100 : 1);
  if (chance >= 0.01 && chance <= 0.999) return chance;
  throw misread("chance", given, "0.01 to 0.999, or 1% to 99.9%");
}

/** Months as a range, which may run past December, or as a list. */
function readMonths(given: string | null): readonly number[] | null {
  if (given === null) return null;
  const months = given.split(",").flatMap((part) => {
    const [, from, to = from] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(part.trim()) ?? [];
    return monthsBetween(Number(from), Number(to));
  });
  if (months.every((month) => month >= 1 && month <= 12)) return [...new Set(months)];
  throw misread("months", given, "months from 1 to 12 as 6-8 or 6,7,8; 11-2 runs past December");
}

function monthsBetween(from: number, to: number): number[] {
  if (!(from >= 1 && from <= 12 && to >= 1 && to <= 12)) return [NaN];
  return Array.from({ length: ((to - from + 12) % 12) + 1 }, (_, i) => ((from - 1 + i) % 12) + 1);
}

const chemistryIds: readonly ChemistryId[] = ["agm", "gel", "flooded", "lfp"];

function readChemistries(given: string | null): readonly ChemistryId[] | null {
  if (given === null) return null;
  const named = given.split(",").map((part) => chemistryIds.find((id) => id === part.trim().toLowerCase()));
  if (named.every((one) => one !== undefined)) return [...new Set(named)];
  throw misread("chemistry", given, `${chemistryIds.join(", ")}, several with commas between`);
}

function readDate(given: string | null): string | null {
  if (given === null) return null;
  const day = /^\d{4}-\d{2}-\d{2}$/.test(given) ? new Date(`${given}T00:00:00Z`) : new Date(NaN);
  if (Number.isFinite(day.getTime()) && day.toISOString().startsWith(given)) return given;
  throw misread("date", given, "a day as YYYY-MM-DD");
}

function readLocale(given: string | null): string | null {
  if (given === null) return null;
  try {
    const [known] = Intl.NumberFormat.supportedLocalesOf(given);
    if (known !== undefined) return known;
  } catch {
    // not even a tag: said below, as what is one and is not known
  }
  throw misread("locale", given, "a language tag such as en-ZA, af or de-AT");
}
