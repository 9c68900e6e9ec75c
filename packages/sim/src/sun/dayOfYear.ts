import { DAYS_BEFORE, MONTH_DAYS } from "../numeric/calendar.ts";
import { mustBeWhole } from "../numeric/must.ts";

/**
 * Day of the year of a date, in a year of 365 days. 29 February is taken as 28 February (59): climates know no leap years.
 *
 * @param month 1 to 12
 * @param day day of the month, 1 to the month's last (29 in February)
 * @returns 1 (1 January) to 365 [day]
 * @throws RangeError where the month has no such day
 */
export function dayOfYear(month: number, day: number): number {
  mustBeWhole("month", month, 1, 12);
  const last = MONTH_DAYS[month - 1] ?? 31;
  mustBeWhole("day", day, 1, month === 2 ? 29 : last);
  return (DAYS_BEFORE[month - 1] ?? 0) + Math.min(day, last);
}
