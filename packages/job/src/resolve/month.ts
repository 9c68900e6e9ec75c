const monthDays = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Month and day of an arrival "MM-DD"; with another month, the same day of it or its last. */
export function arrival(arrive: string, month?: number): { month: number; day: number } {
  const [own, day] = arrive.split("-").map(Number) as [number, number];
  const asked = month ?? own;
  const last = monthDays[asked - 1];
  if (last === undefined) throw new RangeError(`month must be a whole number from 1 to 12, got ${asked}`);
  return { month: asked, day: Math.min(day, last) };
}
