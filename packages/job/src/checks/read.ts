import { asFields, asList, at } from "../faults/at.ts";
import type { Keys } from "../faults/fault.ts";

/** A part of a job with where it stands. */
export interface Part {
  readonly keys: Keys;
  readonly fields: Record<string, unknown>;
}

/** The entries of a list in a value, each with its path. */
export function parts(root: unknown, ...keys: Keys): Part[] {
  return asList(at(root, keys)).map((entry, i) => ({ keys: [...keys, i], fields: asFields(entry) }));
}

/** One object in a value; null where there is none. */
export function part(root: unknown, ...keys: Keys): Part | null {
  const value = at(root, keys);
  return typeof value === "object" && value !== null && !Array.isArray(value)
    ? { keys, fields: asFields(value) }
    : null;
}

/** A field as a number; NaN where it is none, so that every comparison with it is false. */
export const num = (fields: Record<string, unknown>, key: string): number =>
  typeof fields[key] === "number" ? fields[key] : NaN;

/** Every load of a job with its path: the job's own and those that setups add. */
export const everyLoad = (job: unknown): Part[] => [
  ...parts(job, "loads"),
  ...parts(job, "setups").flatMap((setup) => parts(job, ...setup.keys, "loads", "add")),
];
