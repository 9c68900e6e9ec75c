import { Refusal } from "../faults.ts";
import { notesFor, readJob } from "../io/readJob.ts";
import { worked } from "../io/progress.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { matchText } from "../text/matchText.ts";
import { ofJob } from "../text/ofJob.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** What would explain what the customer saw: the bank's condition, the fridge's use, or shade. Without `--setup`, of the first. */
export const matchVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, options, io);
  const { study, match: seen } = read;
  if (seen.length === 0) {
    const accepted = 'accepted is a list of what was seen, such as [{ "flatOnMorning": 3 }]';
    throw new Refusal(operand === "-" ? "standard input" : operand, [
      { message: `match: nothing was given; ${accepted}` },
    ]);
  }
  const setup = study.setups[0]!;
  const notes = notesFor(read, [setup]);
  const { drawCount, matchInParts } = await import("@stayput/sim");
  const lastMorning = { trip: { nights: Math.max(...seen.map(({ flatOnMorning }) => flatOnMorning)) } };
  const skies = await skiesOf(operand, lastMorning, options, io);
  const answer = await worked(matchInParts(study, setup, seen, skies), options, io);
  if (options.json) return document({ ...read, notes }, { setup: setup.id, draws: drawCount(skies), ...answer });
  const { nights } = study.trip;
  return matchText({
    ...ofJob(read),
    nights,
    setup: setup.name,
    seen,
    answer,
    draws: drawCount(skies),
    assumed: notes,
  });
};
