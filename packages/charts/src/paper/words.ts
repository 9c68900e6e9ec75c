import type { Days } from "@stayput/sim";

const space = "\u00a0"; // keeps a figure and its unit on one line

const formats = new Map<string, Intl.NumberFormat>();
/** Intl formats take tens of microseconds to build, a chart needs dozens a frame: each is built once. */
function numberFormat(locale: string, key: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const name = `${locale}/${key}`;
  const known = formats.get(name) ?? new Intl.NumberFormat(locale, options);
  formats.set(name, known);
  return known;
}

/** A number with at most so many decimals. */
export const sayNumber = (value: number, locale = "en", decimals = 0): string =>
  numberFormat(locale, `max${decimals}`, { maximumFractionDigits: decimals }).format(value === 0 ? 0 : value);

/** A number with exactly so many decimals: volts line up. */
export const sayFixed = (value: number, locale = "en", decimals = 1): string =>
  numberFormat(locale, `fix${decimals}`, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }).format(value);

/** With its sign, for gains and drops; a true minus sign rather than a hyphen. */
export const saySigned = (value: number, locale = "en", decimals = 1): string =>
  numberFormat(locale, `sign${decimals}`, { maximumFractionDigits: decimals, signDisplay: "exceptZero" })
    .format(value)
    .replace("-", "\u2212");

/** A share, 0 to 1, as whole percent. */
export const sayPercent = (share: number, locale = "en"): string =>
  numberFormat(locale, "pct", { style: "percent", maximumFractionDigits: 0 }).format(share);

/** A chance found by drawing skies: none of so many does not mean never, nor all of them always. */
export function sayChance(chance: number, locale = "en"): string {
  if (chance < 0.005) return `< ${sayPercent(0.01, locale)}`;
  return chance > 0.995 ? `> ${sayPercent(0.99, locale)}` : sayPercent(chance, locale);
}

/** The same, to stand in a sentence: "under 1%". */
export const chanceInWords = (chance: number, locale = "en"): string =>
  sayChance(chance, locale).replace("< ", "under ").replace("> ", "over ");

export const withUnit = (figure: string, unit: string): string => `${figure}${space}${unit}`;

/** Watt-hours, or kilowatt-hours from 10 kWh up. */
export const sayWh = (energy_Wh: number, locale = "en"): string =>
  energy_Wh >= 10_000
    ? withUnit(sayNumber(energy_Wh / 1000, locale, 1), "kWh")
    : withUnit(sayNumber(energy_Wh, locale), "Wh");

/**
 * Days in words: a tenth under ten days, whole days above (the model is not worth more), and "60 days or more" where it
 * did not run down within the horizon.
 */
export function sayDays(days: Days, horizon_days: number, locale = "en"): string {
  if (days === null) return `${withUnit(sayNumber(horizon_days, locale), "days")} or more`;
  const figure = sayNumber(days, locale, days < 9.95 ? 1 : 0);
  return withUnit(figure, figure === sayNumber(1, locale) ? "day" : "days");
}

/** The same without its unit, for columns: "2.6", "14", "60+". */
export const sayDaysShort = (days: Days, horizon_days: number, locale = "en"): string =>
  days === null ? `${sayNumber(horizon_days, locale)}+` : sayNumber(days, locale, days < 9.95 ? 1 : 0);

/** P10 to P90 in as few words as they need: "2.1 to 3.4 days", "4.8 to 60 days or more". */
export function sayRange(p10: Days, p90: Days, horizon_days: number, locale = "en"): string {
  if (p10 === null || sayDays(p10, horizon_days, locale) === sayDays(p90, horizon_days, locale))
    return sayDays(p90, horizon_days, locale);
  return `${sayDaysShort(p10, horizon_days, locale)} to ${sayDays(p90, horizon_days, locale)}`;
}

/** A clock hour, 0 to 24, on the 24-hour clock. */
export function sayClock(hour: number): string {
  const minutes = (((Math.round(hour * 60) % 1440) + 1440) % 1440) | 0;
  const two = (n: number) => String(n).padStart(2, "0");
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** Minutes from the midnight before arrival, to the ten minutes the answer is worth. */
const minutesOf = (days: number, arrival_h: number): number => Math.round((arrival_h * 60 + days * 1440) / 10) * 10;

/** The hour of a moment so many days after arrival: "04:40". */
export const sayHourOf = (days: number, arrival_h = 15): string => sayClock(minutesOf(days, arrival_h) / 60);

/**
 * A moment so many days after arrival, by the nights of the trip, which is how one counts when camped and how the shaded
 * nights of a chart are counted: "night 3, 23:50" and "night 3, 04:40" are of the third night, "after night 3, 08:10" is
 * the morning that follows. A night is counted from 18:00 to 06:00.
 */
export function sayMoment(days: number, arrival_h = 15): string {
  const minutes = minutesOf(days, arrival_h);
  const midnights = Math.floor(minutes / 1440);
  const hour = (minutes - midnights * 1440) / 60;
  const night = hour >= 18 ? midnights + 1 : midnights;
  const dark = hour >= 18 || hour < 6;
  return `${night === 0 ? "arrival day" : `${dark ? "" : "after "}night ${night}`}, ${sayHourOf(days, arrival_h)}`;
}

const list = /* @__PURE__ */ new Intl.ListFormat("en-GB", { type: "conjunction" });
/** Names joined as a sentence does: "a", "a and b", "a, b and c". */
export const sayList = (names: readonly string[]): string => list.format(names);

const monthFormats = new Map<string, Intl.DateTimeFormat>();
/** Month 1 to 12. Formats are built once each, like those of numbers. */
export function sayMonth(month: number, locale = "en", width: "long" | "short" | "narrow" = "short"): string {
  const name = `${locale}/${width}`;
  const format = monthFormats.get(name) ?? new Intl.DateTimeFormat(locale, { month: width, timeZone: "UTC" });
  monthFormats.set(name, format);
  return format.format(new Date(Date.UTC(2025, month - 1, 15)));
}
