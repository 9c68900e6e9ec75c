import { MONTH_DAYS } from "../numeric/calendar.ts";
import type { Trip } from "../study.ts";

/** The same trip begun in another month, 1 to 12: on the same day of it, or on its last where it has no such day. */
export const tripIn = (trip: Trip, month: number): Trip => ({
  ...trip,
  month,
  day: Math.min(trip.day, MONTH_DAYS[month - 1] ?? NaN),
});
