import { readJob } from "../io/readJob.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { explainText } from "../text/explainText.ts";
import { ofJob } from "../text/ofJob.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** How long each setup lasts, where the energy goes, what flattens it and what would change that. */
export const explainVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, options, io);
  const { explain } = await import("@stayput/sim");
  const answer = explain(read.study, { skies: await skiesOf(operand, read.study, options, io) });
  return options.json ? document(read, answer) : explainText({ ...ofJob(read), answer, assumed: read.notes });
};
