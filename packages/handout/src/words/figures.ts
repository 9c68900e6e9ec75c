import { sayMoment, sayNumber, saySigned } from "@stayput/charts";

const space = "\u00a0";

/** A price in the job's currency, or a bare number; without a fraction where there is none. */
export function priceSaid(price: number, currency: string | null, locale: string): string {
  const style = currency === null ? {} : { style: "currency" as const, currency };
  const whole = Number.isInteger(price) ? { minimumFractionDigits: 0, maximumFractionDigits: 0 } : {};
  return new Intl.NumberFormat(locale, { ...style, ...whole }).format(price);
}

/** Kilograms more or less than what is fitted now, whole ones. */
export const massChangeSaid = (mass_kg: number, locale: string): string =>
  `${saySigned(Math.round(mass_kg), locale, 0)}${space}kg`;

/** Trips out of a hundred. What so many skies cannot tell from none or all is not said to be. */
export function outOf100(share: number, draws: number): string {
  const least = Math.max(1, Math.ceil(100 / draws));
  if (share * draws < 0.5) return `under ${least} in 100`;
  if ((1 - share) * draws < 0.5) return `over ${100 - least} in 100`;
  return `${Math.min(99, Math.max(1, Math.round(share * 100)))} in 100`;
}

/** Hours of driving: tenths under ten, whole from there; null: not within the two days looked at. */
export function drivingSaid(hours: number | null, locale: string): string {
  if (hours === null) return `not in 48${space}h`;
  if (hours < 0.25) return "at once";
  return `${sayNumber(hours, locale, hours < 9.95 ? 1 : 0)}${space}h`;
}

/** Amps and the like, a tenth under ten. */
export const ampsSaid = (amps_A: number, locale: string): string => sayNumber(amps_A, locale, amps_A < 9.95 ? 1 : 0);

/** A day written as "YYYY-MM-DD", in words. @throws RangeError where it is no day */
export function dateSaid(date: string, locale: string): string {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(date) ? new Date(`${date}T00:00:00Z`) : new Date(NaN);
  if (!Number.isFinite(day.getTime()) || day.toISOString().slice(0, 10) !== date)
    throw new RangeError(`date must be a day as "YYYY-MM-DD", got ${JSON.stringify(date.slice(0, 40))}`);
  return new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" }).format(day);
}

/** Months inside our sentences are in the sentences' own language, whatever the figures are in. */
export const sentenceLocale = (locale: string): string => (/^en\b/.test(locale) ? locale : "en-GB");

/** A day of a month without its year: "14 November". */
export const monthDaySaid = (month: number, day: number, locale: string): string =>
  new Intl.DateTimeFormat(sentenceLocale(locale), { day: "numeric", month: "long", timeZone: "UTC" }).format(
    new Date(Date.UTC(2024, month - 1, day)),
  );

/** A moment so many days after arrival, to stand in a sentence: "in night 3 about 23:50", "after night 3 about 08:10". */
export function momentSaid(days: number): string {
  const said = sayMoment(days).replace(", ", " about ");
  return said.startsWith("night") ? `in ${said}` : said.startsWith("arrival") ? `on ${said}` : said;
}
