/**
 * The job file: schema, faults, resolving, text, links.
 *
 * @module @stayput/job
 */
export { FORMAT, VERSION, jobSchema, type Job, type JobInput, type SetupInJob } from "./schema/job.ts";
export type { LoadInJob } from "./schema/load.ts";
export type { PlaceInJob } from "./schema/place.ts";
export type { Dimension } from "./schema/leaf.ts";
export type { Fault } from "./faults/fault.ts";
export { loadNearestPlaces, type NearestPlaces } from "./faults/noSuchPlace.ts";
export { parseJob, type ParsedJob, type ParseOptions, type Refused } from "./parseJob.ts";
export { LONGEST_TEXT, parseJobText } from "./text/parseJobText.ts";
export type { WordsContext } from "./words/context.ts";
export type { WordsReader, WordsResult } from "./words/readWords.ts";
export { migrate, migrations, type Migration } from "./versions/migrate.ts";
export {
  findClimates,
  resolve,
  resolveWith,
  type JobClimates,
  type Resolved,
  type ResolvedObservation,
  type ResolveOptions,
  type Unresolved,
} from "./resolve/resolve.ts";
export { findClimate, type ClimateFound, type PlaceFound } from "./resolve/climate.ts";
export { readJobText } from "./text/readJobText.ts";
export { toJobText } from "./text/toJobText.ts";
export { packJob, unpackJob, type Unpacked } from "./link/link.ts";
export { jobJsonSchema } from "./jsonSchema.ts";
export { csv, type CsvColumn } from "./hours/csv.ts";
export { hoursColumns } from "./hours/hoursColumns.ts";
export { answerText } from "./text/answerText.ts";
export type * from "./answers/documents.ts";
