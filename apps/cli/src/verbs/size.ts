import { Misuse } from "../faults.ts";
import { chosenSetups, notesFor, readJob } from "../io/readJob.ts";
import { worked } from "../io/progress.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { ofJob } from "../text/ofJob.ts";
import { sizeText } from "../text/sizeText.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** The smallest banks and arrays that last, for the loads and chargers of one setup: that of `--setup`, or the first. */
export const sizeVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, { month: options.month, setup: null }, io);
  const { job, study } = read;
  const setup = chosenSetups(study.setups, options.setup)[0]!;
  const [{ sizeRequest }, { crossCheck, drawCount, sizeInParts }] = await Promise.all([
    import("@stayput/job/sizing"),
    import("@stayput/sim"),
  ]);
  const { request, notes } = sizeRequest(
    job,
    study.trip,
    { setup, fitted: study.setups[0]! },
    {
      nights: options.nights ?? undefined,
      chance: options.chance ?? undefined,
      months: options.months ?? (options.month === null ? undefined : [options.month]),
      chemistries: options.chemistry ?? undefined,
    },
  );
  if (options.skies !== null && request.months.length > 1)
    throw new Misuse("--skies: the skies of a file are of one season; --months or --month must name one month");
  const skies = await skiesOf(operand, { trip: request }, options, io);
  const answer = await worked(sizeInParts(study, setup, request, skies), options, io);
  const handbook = answer.pick === null ? null : crossCheck(study, setup, answer.pick, HANDBOOK_DAYS);
  const assumed = [...notesFor(read, [setup]), ...notes];
  const drawn = { seed: "rows" in skies ? null : skies.seed, draws: drawCount(skies) };
  if (options.json) {
    return document({ ...read, notes: assumed }, { setup: setup.id, ...drawn, ...answer, handbook });
  }
  const { currency } = job;
  return sizeText({
    ...ofJob(read),
    setup: setup.name,
    answer,
    handbook,
    currency,
    ...drawn,
    assumed,
  });
};

/** Days without sun that the handbook is asked to carry. Common practice, no source. */
const HANDBOOK_DAYS = 3;
