/** Days in each month of the model's year, which has 365: climates are means over many years. */
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** What is said where an arrival is on the day that the model's year has not. */
export const leapNote = "29 February is taken as 28 February, since the year of the model has 365 days.";

/** Whether an arrival "MM-DD" is on the day that the model's year has not. */
export const isLeapDay = (arrive: string): boolean => arrive === "02-29";

/** Month and day of an arrival "MM-DD", 29 February as 28 February; with another month, the same day of it or its last. */
export function arrival(arrive: string, month?: number): { month: number; day: number } {
  const [own, day] = arrive.split("-").map(Number) as [number, number];
  const asked = month ?? own;
  const last = monthDays[asked - 1];
  if (last === undefined) throw new RangeError(`month must be a whole number from 1 to 12, got ${asked}`);
  return { month: asked, day: Math.min(day, last) };
}
