import { crumbless } from "./number.ts";
import { readUnit, valueIn } from "./unit.ts";

/** Hours in "2 h 30", "2h30", "2 h 30 min", "1:30", "90 min"; null where it is no duration. */
export function durationIn_h(text: string): number | null {
  const parts = /^(\d{1,3})\s*(?:h|hr|hrs|hours?|:)\s*(\d{1,2})\s*(?:m|min|mins|minutes?)?$/i.exec(text.trim());
  if (parts !== null) return Number(parts[2]) < 60 ? Number(parts[1]) + Number(parts[2]) / 60 : null;
  const read = readUnit(text);
  return read === null ? null : valueIn(read, "h");
}

/** Clock hours in "18:30", "18h30", "6 pm", "6:30 pm", "6.30pm", "18 h", "18.5 h", "noon"; null where it is no time of day. */
export function clockIn_h(text: string): number | null {
  if (/^(?:noon|midday)$/i.test(text.trim())) return 12;
  const parts =
    /^(\d{1,2})(?:\s*[:h]\s*(\d{2}))?\s*(h|am|pm|a\.m\.|p\.m\.)?$/i.exec(text.trim()) ??
    /^(\d{1,2})\.(\d{2})\s*(am|pm|a\.m\.|p\.m\.)$/i.exec(text.trim());
  if (parts === null) return decimalHours(text);
  const minutes = Number(parts[2] ?? 0);
  const hour = hourOf(Number(parts[1]), (parts[3] ?? "").toLowerCase().charAt(0));
  return hour === null || minutes >= 60 ? null : crumbless(hour + minutes / 60);
}

/** Clock hours as a job file has them, with their unit: "18.5 h". */
function decimalHours(text: string): number | null {
  const hours = Number(/^(\d{1,2}\.\d+)\s*h$/i.exec(text.trim())?.[1] ?? NaN);
  return hours <= 24 ? hours : null;
}

/** 12 am is midnight, 12 pm noon. */
function hourOf(hour: number, half: string): number | null {
  if (half !== "a" && half !== "p") return hour <= 24 ? hour : null;
  if (hour < 1 || hour > 12) return null;
  return (hour % 12) + (half === "p" ? 12 : 0);
}
