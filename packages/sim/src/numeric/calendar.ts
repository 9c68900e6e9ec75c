/** A calendar of 365 days: climates are means over many years, so there is no 29 February to keep. */

/** Days in each month, January first. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Days before the first of each month, January first, and 365 at the end. */
export const DAYS_BEFORE: readonly number[] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Brings any whole day count onto 1 to 365: day 366 is 1 January again. */
export function wrapDay(day: number): number {
  return ((((day - 1) % 365) + 365) % 365) + 1;
}

/** Month of a day of the year, 0 for January to 11. */
export function monthIndex(dayOfYear: number): number {
  let month = 0;
  while (month < 11 && dayOfYear > (DAYS_BEFORE[month + 1] ?? 365)) month++;
  return month;
}

/** Middle of a month in days of the year: 16 for January. A month index of -1 or 12 lies in the year beside. */
export function midMonth(month: number): number {
  const index = (month + 12) % 12;
  const year = month < 0 ? -365 : month > 11 ? 365 : 0;
  return year + (DAYS_BEFORE[index] ?? 0) + ((MONTH_DAYS[index] ?? 0) + 1) / 2;
}
