import { crossFaults } from "./checks/index.ts";
import type { Fault, Found, Keys } from "./faults/fault.ts";
import { finish } from "./faults/finish.ts";
import type { NearestPlaces } from "./faults/noSuchPlace.ts";
import { fromIssues } from "./faults/fromIssues.ts";
import { orNull } from "./faults/orNull.ts";
import { sound } from "./faults/sound.ts";
import { guard } from "./faults/guard.ts";
import { jobSchema, type Job } from "./schema/job.ts";
import { migrate } from "./versions/migrate.ts";
import { asTyped } from "./words/asTyped.ts";
import { readWords, type WordsReader } from "./words/readWords.ts";

/** A job that is valid, every default filled in. */
export interface ParsedJob {
  readonly ok: true;
  readonly job: Job;
  /** what was assumed in reading values typed in words, such as the volts of "3 A" */
  readonly notes: readonly string[];
}

/** A job that is not valid, and everything wrong with it. */
export interface Refused {
  readonly ok: false;
  /** every fault, in the order of the file */
  readonly faults: readonly Fault[];
  /** some value is typed in words ("3 A") and no reader was given */
  readonly needsWords?: true;
}

/** How to read words and look places up, and where lines are known. */
export interface ParseOptions {
  /** reads "3 A" and the like; `words` of @stayput/job/quantities. Without one, such a value is a fault. */
  readonly words?: WordsReader;
  /** looks places up; `loadNearestPlaces()` of @stayput/job. Without it a place that is not there is told by `resolve`. */
  readonly nearestPlaces?: NearestPlaces;
  /** the line on which a path stands, where there is a text */
  readonly lineOf?: (keys: Keys) => number | undefined;
}

/**
 * A job from any value: checked, migrated to this version, words read as numbers, defaults filled in.
 *
 * @returns the job, or every fault at once in the order of the file; never throws on bad input
 */
export function parseJob(value: unknown, options: ParseOptions = {}): ParsedJob | Refused {
  const refuse = (found: readonly Found[], root: unknown): Refused => ({
    ok: false,
    faults: finish(found, root, options.lineOf),
  });
  const unsafe = guard(value, jobSchema);
  if (unsafe.length > 0) return refuse(unsafe, value);
  const current = migrate(value);
  if (!current.ok) return refuse([current.fault], value);
  const read = readWords(jobSchema, current.value, options.words);
  const parsed = jobSchema.safeParse(read.value);
  const refused = orNull([...read.faults, ...shapeFaults(parsed.error?.issues ?? [], read)], jobSchema);
  const found = [...refused, ...sound(crossFaults(read.value, options.nearestPlaces), refused)];
  if (found.length > 0 || !parsed.success) {
    const needsWords = options.words === undefined && read.faults.length > 0;
    return { ...refuse(asTyped(found, read.said), read.value), ...(needsWords ? { needsWords } : {}) };
  }
  return { ok: true, job: parsed.data, notes: read.notes };
}

type Issues = Parameters<typeof fromIssues>[0];

/** The schema's faults, less those of words that could not be read, which are told already. */
function shapeFaults(issues: Issues, read: ReturnType<typeof readWords>): Found[] {
  const told = new Set(read.faults.map(({ keys }) => keys.join("\n")));
  return fromIssues(issues, read.value).filter(({ keys }) => !told.has(keys.join("\n")));
}
