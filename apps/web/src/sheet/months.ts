import { sayMonth } from "@stayput/charts";
import { locale } from "../words/locale.ts";

/** Month names in the reader's language. */
export const monthNames = (): string[] =>
  Array.from({ length: 12 }, (_, month) => sayMonth(month + 1, locale(), "long"));
/** The year of the model has 365 days. */
const longest = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const two = (n: number): string => String(n).padStart(2, "0");

export const monthOf = (arrive: string): number => Number(arrive.slice(0, 2)) || 1;
export const dayOf = (arrive: string): number => Math.min(Number(arrive.slice(3, 5)) || 1, daysIn(monthOf(arrive)));
/** "MM-DD", the day held to the month's last. */
export const arriveOn = (month: number, day: number): string =>
  `${two(month)}-${two(Math.min(Math.max(1, day), longest[month - 1] ?? 31))}`;
export const daysIn = (month: number): number => longest[month - 1] ?? 31;
