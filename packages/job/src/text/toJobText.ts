import { jobSchema, type Job } from "../schema/job.ts";
import { withoutDefaults } from "./withoutDefaults.ts";

/**
 * A job as the text of a file: JSON with fields in the schema's order, what the defaults say left out unless `full`. The
 * same job always gives the same text, and parseJobText gives the same job again.
 */
export function toJobText(job: Job, options: { readonly full?: boolean } = {}): string {
  const value = options.full === true ? job : withoutDefaults(jobSchema, jobSchema.parse(job));
  return `${JSON.stringify(value, null, 2)}\n`;
}
