/** Words shared by the answers' sentences. No false precision: shares in whole hundredths, energies to two figures. */

const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** @param month 1 to 12 */
export const monthName = (month: number): string => monthNames[month - 1] ?? `month ${month}`;

/** "a, b and c". */
export function listed(parts: readonly string[], last = "and"): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} ${last} ${parts.at(-1)!}`;
}

/** "1 night", "3 nights". */
export const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;

/** A share of skies as trips out of a hundred; what is not quite none or all is not said to be. */
export function outOf100(share: number): string {
  if (share > 0 && share < 0.01) return "fewer than 1 of 100";
  if (share > 0.99 && share < 1) return "more than 99 of 100";
  return `${Math.round(share * 100)} of 100`;
}

/** To two figures, thousands apart: "2,100". */
export function about(value: number): string {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.abs(value) || 1)) - 1);
  return Math.round(Math.round(value / step) * step).toLocaleString("en-GB");
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Days to a tenth; to whole days from ten on. */
export const days = (value: number): string => {
  const text = value >= 10 ? value.toFixed(0) : value.toFixed(1).replace(/\.0$/, "");
  return `${text} ${text === "1" ? "day" : "days"}`;
};

/** Amps as one would read them off a meter: to a tenth, to whole amps from ten on; none where they come to nothing. */
export function amps(value_A: number): string {
  const text = value_A >= 9.95 ? value_A.toFixed(0) : value_A.toFixed(1).replace(/\.0$/, "");
  return text === "0" ? "no amps" : `${text} A`;
}
