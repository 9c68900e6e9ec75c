import { asFields } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { show } from "../faults/show.ts";
import { VERSION } from "../schema/job.ts";

/** Turns a job of version n, not yet checked, into one of version n + 1. It must not throw, whatever it is given. */
export type Migration = (job: Record<string, unknown>) => Record<string, unknown>;

/** By the version from which each one starts. Version 1 is the first, so there is none yet. */
export const migrations: Readonly<Record<number, Migration>> = {};

export type Migrated = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly fault: Found };

/**
 * A job of an older version brought to the newest, step by step. A value without a version is passed on as it is, for the
 * schema to say what is missing. `registry` and `newest` are given by tests.
 */
export function migrate(value: unknown, registry = migrations, newest: number = VERSION): Migrated {
  const version = asFields(value)["version"];
  if (typeof version !== "number" || !Number.isInteger(version)) return { ok: true, value };
  if (version > newest) return refused(version, newest, "it was made by a newer program; update this one");
  let job = asFields(value);
  for (let v = version; v < newest; v++) {
    const step = registry[v];
    if (step === undefined) return refused(version, newest, "no way to bring it up to date is known");
    job = { ...step(job), version: v + 1 };
  }
  return { ok: true, value: version === newest ? value : job };
}

const refused = (version: number, newest: number, why: string): Migrated => ({
  ok: false,
  fault: {
    keys: ["version"],
    given: show(version),
    accepted: `a version up to ${newest}`,
    says: `the file is of version ${version}, and this program reads up to ${newest}: ${why}`,
  },
});
