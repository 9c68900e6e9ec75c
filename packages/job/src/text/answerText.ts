import type { Resolved } from "../resolve/resolve.ts";
import type { Job } from "../schema/job.ts";

/** One JSON document: what the answer is of and what was assumed, and then the answer. */
export function answerText(
  of: Pick<Resolved, "study" | "notes"> & { readonly job: Pick<Job, "title" | "currency">; readonly place: object },
  answer: object,
): string {
  const { job, place, study, notes } = of;
  const { month, day, nights } = study.trip;
  const head = { title: job.title, place, arrive: { month, day }, nights, currency: job.currency, assumed: notes };
  return `${JSON.stringify({ ...head, ...answer })}\n`;
}
