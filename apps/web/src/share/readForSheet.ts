import {
  migrate,
  parseJobText,
  toJobText,
  unpackJob,
  type Fault,
  type JobInput,
  type ParsedJob,
  type ParseOptions,
  type Refused,
} from "@stayput/job";
import { fitsSheet } from "./fitsSheet.ts";

/** A text as it can be opened: with blanks to put right where `faults` has any. */
export type ForSheet =
  | {
      readonly ok: true;
      readonly job: JobInput;
      readonly faults: readonly Fault[];
      /** it was written by an older version, and has been brought up to date */
      readonly older: boolean;
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * A job for the sheet from the text of a file or of the store, as it was typed. What the schema refuses is opened all the
 * same where each fault has its blank; anything else is refused in words. Never throws on bad input.
 */
export async function readForSheet(text: string): Promise<ForSheet> {
  const parsed = await inWords((options) => parseJobText(text, options));
  if (!parsed.ok && parsed.faults.some(ofTheText)) return parsed;
  const typed: unknown = JSON.parse(text.replace(/^\uFEFF/, ""));
  const current = migrate(typed);
  if (!current.ok || (!parsed.ok && !(await fits(current.value)))) return refused(parsed);
  return {
    ok: true,
    job: current.value as JobInput,
    faults: parsed.ok ? [] : parsed.faults,
    older: current.value !== typed,
  };
}

/** The published schema is fetched when a job with faults is first opened. */
async function fits(value: unknown): Promise<boolean> {
  const { default: schema } = await import("../../../../shared/schema/job.schema.json");
  return fitsSheet(value, schema);
}

/** No JSON, too long or too deep; or a field that stands twice, which only the text shows. */
const ofTheText = ({ path, accepted }: Fault): boolean => path === "" || accepted === "each field once";

const refused = (parsed: Read): ForSheet => ({ ok: false, faults: parsed.ok ? [] : parsed.faults });

/** The job of a link's fragment; a link holds only whole jobs, so nothing is put right here. */
export function readLinkForSheet(fragment: string): ForSheet {
  const unpacked = unpackJob(fragment);
  if (!unpacked.ok) return { ok: false, faults: unpacked.faults };
  return { ok: true, job: JSON.parse(toJobText(unpacked.job)) as JobInput, faults: [], older: false };
}

type Read = ParsedJob | Refused;
type Options = Pick<ParseOptions, "words">;

/** Reads without the reader of words, which is large, unless it is needed. */
export async function inWords(read: (options: Options) => Read): Promise<Read> {
  const first = read({});
  if (first.ok || first.needsWords !== true) return first;
  const { words } = await import("@stayput/job/quantities");
  return read({ words });
}
