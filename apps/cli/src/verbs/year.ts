import { worked } from "../io/progress.ts";
import { readJob } from "../io/readJob.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { ofJob } from "../text/ofJob.ts";
import { yearText } from "../text/yearText.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

const USUAL_CHANCE = 0.9; // what `size` asks too where nobody says

/** The same trip begun in each month of the year: days and chance of every setup. */
export const yearVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, { month: null, setup: options.setup }, io);
  const { job, study, notes } = read;
  const { defaultHorizon_days: horizon_days, drawCount, roundTheYearInParts } = await import("@stayput/sim");
  const skies = await skiesOf(operand, study, options, io);
  const answer = await worked(roundTheYearInParts(study, skies, horizon_days), options, io);
  const drawn = { seed: options.seed, draws: drawCount(skies), horizon_days };
  if (options.json) return document(read, { ...drawn, ...answer });
  const { nights } = study.trip;
  const asked = options.chance ?? job.sizing?.chance ?? USUAL_CHANCE;
  return yearText({ ...ofJob(read), ...drawn, nights, asked, answer, assumed: notes });
};
