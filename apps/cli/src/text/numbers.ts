import type { Days } from "@stayput/sim";

/** Days in a table: one decimal up to 20, whole from there, since no later digit could be trusted; "60+" for never. */
export function daysCell(days: Days, horizon_days: number): string {
  if (days === null) return `${Math.floor(horizon_days)}+`;
  return days < 20 ? days.toFixed(1) : days.toFixed(0);
}

/** Days in a sentence: "2.9 days", "60 days or more". */
export function daysSaid(days: Days, horizon_days: number): string {
  if (days === null) return `${Math.floor(horizon_days)} days or more`;
  const shown = daysCell(days, horizon_days);
  return `${shown} ${shown === "1.0" ? "day" : "days"}`;
}

const FEW = 10; // skies: a percentage of fewer would say more than they can

/** A chance in whole percent, of few skies as a count. What so many draws cannot tell from never or always is not called 0 or 100. */
export function chanceCell(chance: number, draws: number): string {
  if (draws < FEW) return `${Math.round(chance * draws)} of ${draws}`;
  const least = Math.max(1, Math.ceil(100 / draws));
  if (chance * draws < 0.5) return `< ${least} %`;
  if ((1 - chance) * draws < 0.5) return `> ${100 - least} %`;
  return `${Math.min(99, Math.max(1, Math.round(chance * 100)))} %`;
}

export const whole = (value: number): string => Math.round(value).toString();

export const percent = (share: number): string => `${whole(100 * share)} %`;

/** Hours: tenths under ten, whole from there. */
export function hoursSaid(hours: number): string {
  if (hours < 0.05) return "at once";
  return hours < 9.95 ? `${hours.toFixed(1)} h` : `${hours.toFixed(0)} h`;
}

const months = "January February March April May June July August September October November December".split(" ");

export const monthName = (month: number): string => months[month - 1] ?? `month ${month}`;

export const dateSaid = (month: number, day: number): string => `${day} ${monthName(month)}`;

export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Days as a difference: one decimal up to 20, whole from there. */
export function daysMore(days: number): string {
  return Math.abs(days) < 20 ? (Math.round(days * 10) / 10 + 0).toFixed(1) : whole(days);
}

/** Whole numbers in threes, as the sentences of the answers have them: "41,500". */
export const thousands = (value: number): string => Math.round(value).toLocaleString("en-GB");

/** A change, with its sign. */
export const signed = (value: number): string => (Math.round(value) > 0 ? `+${whole(value)}` : whole(value));

/** "a, b and c". */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
