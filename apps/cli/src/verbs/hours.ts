import { csv, hoursColumns } from "@stayput/job";
import { readJob } from "../io/readJob.ts";
import { skiesOf } from "../io/skiesOf.ts";
import type { Run } from "./verb.ts";

/**
 * Every hour of one setup, the trip as described, drives and mains included: under the average sky, or under the first of a
 * file. Without `--setup` the job's first one, and that is said.
 */
export const hoursVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const { study } = await readJob(operand, options, io);
  const [setup, ...others] = study.setups;
  if (setup === undefined) return "";
  if (others.length > 0) io.say(`setup ${setup.id}; --setup chooses another: ${others.map(({ id }) => id).join(", ")}`);
  const { ledgerOf } = await import("@stayput/sim");
  const skies = options.skies === null ? null : await skiesOf(operand, study, options, io);
  const sky = skies !== null && "rows" in skies ? skies.rows[0]! : "average";
  const columns = hoursColumns(ledgerOf(study, setup.id, { sky }), study.trip);
  if (!options.json) return csv(columns);
  const named = columns.map(({ name, values }) => [name, Array.from(values)]);
  return `${JSON.stringify({ setup: setup.id, hours: Object.fromEntries(named) as object })}\n`;
};
