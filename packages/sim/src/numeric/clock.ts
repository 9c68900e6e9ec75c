/**
 * Share of the hour [start_h, start_h + 1) that lies in a daily window; `from` > `to` runs past midnight, and equal ends
 * make no window.
 * @param start_h any whole or decimal hour; taken round the clock
 */
export function hourInWindow(from: number, to: number, start_h: number): number {
  const length = to >= from ? to - from : to - from + 24;
  const into = (((start_h - from) % 24) + 24) % 24;
  const tail = Math.max(0, Math.min(length, into + 1) - into);
  const head = Math.max(0, Math.min(length, into + 1 - 24));
  return Math.min(1, tail + head);
}

/** Share of the hour [start_h, start_h + 1) that lies in the span [from_h, to_h) of a running count of hours. */
export const hourInSpan = (from_h: number, to_h: number, start_h: number): number =>
  Math.max(0, Math.min(to_h, start_h + 1) - Math.max(from_h, start_h));
