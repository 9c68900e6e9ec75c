/** A use as it stands in a job: a window of the clock, or minutes at an hour. Other fields ride along untouched. */
export type StripUse =
  | { readonly from: number; readonly to: number; readonly duty?: number; readonly everyDays?: number }
  | { readonly at: number; readonly minutes: number; readonly everyDays?: number };

export type WindowUse = Extract<StripUse, { from: number }>;

export const isWindow = (use: StripUse): use is WindowUse => "from" in use;

/** Values typed in words are not yet numbers: such a use stands in its fields, and not on the strip. */
export const onStrip = (use: unknown): use is StripUse => {
  const { from, to, at, minutes } = use as Record<string, unknown>;
  return (isHour(from) && isHour(to)) || (isHour(at) && typeof minutes === "number" && minutes > 0 && minutes <= 1440);
};
const isHour = (value: unknown): boolean => typeof value === "number" && value >= 0 && value <= 24;

export const least_h = 0.25;
const day_h = 24;
const wrap = (hour: number): number => ((hour % day_h) + day_h) % day_h;
/** midnight as an end is 24, as a beginning 0 */
const asEnd = (hour: number): number => wrap(hour) || day_h;

export const startOf = (use: StripUse): number => (isWindow(use) ? use.from : use.at);

export function lengthOf(use: StripUse): number {
  if (!isWindow(use)) return use.minutes / 60;
  return use.to > use.from ? use.to - use.from : use.to + day_h - use.from;
}

export const endOf = (use: StripUse): number => asEnd(startOf(use) + lengthOf(use));

/** The use moved by some hours, round midnight where need be. */
export function moved<U extends StripUse>(use: U, by_h: number): U {
  if (!isWindow(use)) return { ...use, at: wrap(use.at + by_h) };
  if (lengthOf(use) >= day_h) return use;
  return { ...use, from: wrap(use.from + by_h), to: asEnd(use.to + by_h) };
}

/** The window with another beginning; its end stays. Never under a quarter of an hour, never over a day. */
export function startingAt(use: WindowUse, from: number): WindowUse {
  const length = wrap(use.to - from) || day_h;
  return length < least_h || (length === day_h && wrap(from) !== 0) ? use : { ...use, from: wrap(from) };
}

/** The window with another end; its beginning stays. */
export function endingAt(use: WindowUse, to: number): WindowUse {
  const length = wrap(to - use.from) || day_h;
  return length < least_h || (length === day_h && use.from !== 0) ? use : { ...use, to: asEnd(to) };
}

/** Where a new window of an hour fits best: the middle of the longest stretch without one. */
export function freeHour(uses: readonly StripUse[]): WindowUse {
  const taken = (hour: number) => uses.some((use) => wrap(hour - startOf(use)) < lengthOf(use));
  const runs = Array.from({ length: day_h }, (_, from) => {
    let length = 0;
    while (length < day_h && !taken(from + length)) length++;
    return { from, length };
  });
  const best = runs.reduce((a, b) => (b.length > a.length ? b : a));
  const from = uses.length === 0 ? 18 : wrap(best.from + Math.max(0, Math.floor((best.length - 1) / 2)));
  return { from, to: asEnd(from + 1) };
}
