import { midMonth, monthIndex } from "./calendar.ts";

/** Where a day lies between two mid-months: the value there is `(1 - share) × months[before] + share × months[after]`. */
export interface MonthLine {
  /** month index, 0 to 11 */
  readonly before: number;
  /** month index, 0 to 11 */
  readonly after: number;
  /** 0 to 1 */
  readonly share: number;
}

/** Straight lines between mid-months, December joined to January. */
export function monthLine(dayOfYear: number): MonthLine {
  const month = monthIndex(dayOfYear);
  const before = dayOfYear < midMonth(month) ? month - 1 : month;
  const share = (dayOfYear - midMonth(before)) / (midMonth(before + 1) - midMonth(before));
  return { before: (before + 12) % 12, after: (before + 1) % 12, share };
}

/** Twelve monthly values read off at a day of the year. */
export function onMonthLine(months: ArrayLike<number>, dayOfYear: number): number {
  const { before, after, share } = monthLine(dayOfYear);
  return (1 - share) * (months[before] ?? NaN) + share * (months[after] ?? NaN);
}
