import type { Setup } from "@stayput/sim";
import { Refusal } from "../faults.ts";
import { worked } from "../io/progress.ts";
import { chosenSetups, notesFor, readJob } from "../io/readJob.ts";
import { skiesOf } from "../io/skiesOf.ts";
import type { Options } from "../options.ts";
import { ofJob } from "../text/ofJob.ts";
import { upgradesText } from "../text/upgradesText.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** What each difference between a setup and a proposal is worth, alone and together. */
export const upgradesVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, { month: options.month, setup: null }, io);
  const { job, study } = read;
  const { from, to } = between(study.setups, options, operand);
  const notes = notesFor(read, [from, to]);
  const others = study.setups.filter((setup) => setup !== from && setup !== to).map(({ id }) => id);
  if (options.to === null && others.length > 0) io.say(`to setup ${to.id}; --to chooses another: ${others.join(", ")}`);
  const { drawCount, upgradesInParts } = await import("@stayput/sim");
  const skies = await skiesOf(operand, study, options, io);
  const answer = await worked(upgradesInParts(study, from, to, skies), options, io);
  const drawn = { seed: "rows" in skies ? null : skies.seed, draws: drawCount(skies) };
  if (options.json) return document({ ...read, notes }, { ...drawn, ...answer });
  const { nights } = study.trip;
  return upgradesText({
    ...ofJob(read),
    ...{ ...drawn, nights, from, to, setups: study.setups, answer, currency: job.currency, assumed: notes },
  });
};

/** The setup as it is, `--setup` or the first, and the proposal, `--to` or the first of the others. */
function between(setups: readonly Setup[], { setup, to }: Options, operand: string): Record<"from" | "to", Setup> {
  const from = chosenSetups(setups, setup)[0]!;
  const others = setups.filter(({ id }) => id !== from.id);
  if (others.length === 0) {
    const message = "setups: one setup was given; accepted are two or more, what is fitted and what is proposed";
    throw new Refusal(operand === "-" ? "standard input" : operand, [{ message }]);
  }
  return { from, to: chosenSetups(others, to, "to")[0]! };
}
