import { readJob } from "../io/readJob.ts";
import { worked } from "../io/progress.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { explainText } from "../text/explainText.ts";
import { ofJob } from "../text/ofJob.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** How long each setup lasts, where the energy goes, what flattens it and what would change that. */
export const explainVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, options, io);
  const { explainInParts } = await import("@stayput/sim");
  const skies = await skiesOf(operand, read.study, options, io);
  const answer = await worked(explainInParts(read.study, { skies }), options, io);
  return options.json ? document(read, answer) : explainText({ ...ofJob(read), answer, assumed: read.notes });
};
