import { chosenSetups, notesFor, readJob } from "../io/readJob.ts";
import { ofJob } from "../text/ofJob.ts";
import { wiringText } from "../text/wiringText.ts";
import { document } from "./document.ts";
import type { Run } from "./verb.ts";

/** Each setup's runs: volts at each point, amps and what limits them, conductors and fuses to use, cautions. */
export const wiringVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  // all setups are read, since what to pull now depends on what the others will ask of it
  const read = await readJob(operand, { month: options.month, setup: null }, io);
  const { study } = read;
  const wanted = chosenSetups(study.setups, options.setup);
  const { bankTemp_C, planStay, wiring } = await import("@stayput/sim");
  const notes = notesFor(read, wanted);
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  const answers = wiring(study.setups, ({ bank }) => bankTemp_C(plan, bank))
    .map((answer, at) => ({ at, answer }))
    .filter(({ answer }) => wanted.some(({ id }) => id === answer.id));
  if (options.json) return document({ ...read, notes }, { setups: answers.map(({ answer }) => answer) });
  return wiringText({ ...ofJob(read), nights: study.trip.nights, answers, assumed: notes });
};
