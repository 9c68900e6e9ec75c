import type { Keys } from "./fault.ts";

/** One step into a value from outside; own properties only. */
function step(value: unknown, key: string | number): unknown {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
  return (value as Record<string | number, unknown>)[key];
}

/** What stands at a path; undefined where there is nothing. */
export function at(value: unknown, keys: Keys): unknown {
  return keys.reduce(step, value);
}

/** A value as an object with fields, an empty one if it is none. */
export function asFields(value: unknown): Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>) : {};
}

/** A value as a list, an empty one if it is none. */
export const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
