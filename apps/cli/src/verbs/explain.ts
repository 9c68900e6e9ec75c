import type { ChargeBand, ExplainAnswer } from "@stayput/sim";
import { Misuse } from "../faults.ts";
import { readJob, type JobRead } from "../io/readJob.ts";
import { readSkies } from "../io/readSkies.ts";
import type { Io } from "../io/streams.ts";
import type { Options } from "../options.ts";
import { explainText } from "../text/explainText.ts";
import { dateSaid } from "../text/numbers.ts";
import { placeSaid } from "../text/placeSaid.ts";
import type { Run } from "./verb.ts";

const DRAWS = 200;

/** How long each setup lasts, where the energy goes, what flattens it and what would change that. */
export const explainVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const read = await readJob(operand, options, io);
  const answer = await answered(read, operand, options, io);
  return options.json ? document(read, answer) : text(read, answer);
};

async function answered({ study }: JobRead, operand: string, options: Options, io: Io): Promise<ExplainAnswer> {
  if (options.skies === "-" && operand === "-") throw new Misuse("standard input holds the job or the skies, not both");
  const { explain } = await import("@stayput/sim");
  const { seed, draws } = options;
  if (options.skies === null) return explain(study, { skies: { seed, draws: draws ?? DRAWS } });
  const rows = await readSkies(options.skies, io.stdin, study.trip.nights + 1);
  return explain(study, { skies: { rows: rows.slice(0, draws ?? rows.length) } });
}

function text({ job, place, study, notes }: JobRead, answer: ExplainAnswer): string {
  return explainText({
    title: job.title,
    customer: job.customer.name === "" ? null : job.customer.name,
    place: placeSaid(place),
    arrive: dateSaid(study.trip.month, study.trip.day),
    answer,
    assumed: notes,
  });
}

/** One JSON document: the answer, and beside it what it is of and what was assumed. */
function document({ job, place, study, notes }: JobRead, answer: ExplainAnswer): string {
  const { month, day } = study.trip;
  const setups = answer.setups.map((setup) => ({ ...setup, charge: rounded(setup.charge) }));
  const whole = { title: job.title, place, arrive: { month, day }, assumed: notes, ...answer, setups };
  return `${JSON.stringify(whole)}\n`;
}

/** Charge to a hundredth of a percent: thousands of values, none of them known better. */
function rounded(band: ChargeBand): ChargeBand {
  const round = (line: readonly number[]): number[] => line.map((charge) => Math.round(charge * 1e4) / 1e4);
  const { p10, p50, p90, average, dark } = band;
  return { p10: round(p10), p50: round(p50), p90: round(p90), average: round(average), dark: round(dark) };
}
