import { readJob } from "../io/readJob.ts";
import { worked } from "../io/progress.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { compareText } from "../text/compareText.ts";
import { ofJob } from "../text/ofJob.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** The setups side by side under the same skies, each held against the first. */
export const compareVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, options, io);
  const { job, study, notes } = read;
  const { compareInParts } = await import("@stayput/sim");
  const skies = await skiesOf(operand, study, options, io);
  const answer = await worked(compareInParts(study, { skies, payload_kg: job.payload_kg }), options, io);
  if (options.json) return document(read, answer);
  return compareText({ ...ofJob(read), answer, currency: job.currency, assumed: notes });
};
