import type { Fault } from "../faults/fault.ts";
import { parseJob, type ParsedJob, type ParseOptions, type Refused } from "../parseJob.ts";
import { brokenAt, repeatedKeys, lineFinder } from "./where.ts";

/** Longest text taken, in UTF-16 units: far over any job's, and small enough to look at in one go. */
export const LONGEST_TEXT = 5_000_000;

/**
 * A job from the text of a file. Never throws on bad input.
 *
 * @param text JSON; a byte order mark is passed over
 * @returns the job, or every fault at once in the order of the file, with lines
 */
export function parseJobText(text: string, options: Omit<ParseOptions, "lineOf"> = {}): ParsedJob | Refused {
  if (text.length > LONGEST_TEXT) return refused(tooLong(text.length));
  const json = text.replace(/^\uFEFF/, "");
  if (json.trim() === "") return refused(fault("the text is empty", "nothing", "a job file"));
  const broken = brokenAt(json);
  if (broken !== null) return refused(broken);
  const lineOf = lineFinder(json);
  const result = parseJob(JSON.parse(json), { ...options, lineOf });
  const repeated = repeatedKeys(json);
  if (repeated.length === 0) return result;
  return { ...(result.ok ? {} : result), ok: false, faults: [...repeated, ...(result.ok ? [] : result.faults)] };
}

const fault = (message: string, given: string, accepted: string): Fault => ({ path: "", given, accepted, message });
const refused = (...faults: Fault[]): Refused => ({ ok: false, faults });

const tooLong = (length: number): Fault =>
  fault(
    `the text has ${length} characters; a job file has at most ${LONGEST_TEXT}`,
    `${length} characters`,
    `at most ${LONGEST_TEXT}`,
  );
