import type { JobRead } from "../io/readJob.ts";

/** One JSON document: what the answer is of and what was assumed, and then the answer. */
export function document({ job, place, study, notes }: JobRead, answer: object): string {
  const { month, day, nights } = study.trip;
  const of = { title: job.title, place, arrive: { month, day }, nights, currency: job.currency, assumed: notes };
  return `${JSON.stringify({ ...of, ...answer })}\n`;
}
