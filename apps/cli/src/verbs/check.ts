import { readJob, type JobRead } from "../io/readJob.ts";
import { assumedOf } from "../text/grouped.ts";
import { lettered } from "../text/heading.ts";
import { count, dateSaid } from "../text/numbers.ts";
import { placeSaid } from "../text/placeSaid.ts";
import { plain } from "../text/plain.ts";
import { wrap } from "../text/wrap.ts";
import type { Run } from "./verb.ts";

/** Whether a job is valid. An invalid one is a Refusal with every fault; of a valid one, what it holds and what was assumed. */
export const checkVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, { month: null, setup: null }, io);
  return options.json ? `${JSON.stringify(document(read), null, 2)}\n` : said(read);
};

function document({ job, place, study, notes }: JobRead): object {
  const { month, day, nights } = study.trip;
  const setups = study.setups.map(({ id, name }) => ({ id, name }));
  return { valid: true, title: job.title, place, arrive: { month, day }, nights, setups, assumed: notes };
}

function said({ job, place, study, notes }: JobRead): string {
  const { month, day, nights } = study.trip;
  const stay = `${plain(placeSaid(place), 80)}, ${count(nights, "night")} from ${dateSaid(month, day)}`;
  const held = `${count(job.loads.length, "load")}, ${count(study.setups.length, "setup")}`;
  const first = wrap(`Valid. ${plain(job.title, 120)}. ${stay}; ${held}.`);
  const setups = study.setups.flatMap(({ id, name }, i) => wrap(`${plain(name, 60)} (${id})`, lettered(i)));
  return `${[...first, ...setups, ...assumedOf(notes, study.setups)].join("\n")}\n`;
}
