import type { Job, ParsedJob, Refused, Resolved } from "@stayput/job";
import { Misuse, Refusal } from "../faults.ts";
import type { Options } from "../options.ts";
import { readText } from "./readText.ts";
import type { Io } from "./streams.ts";

export interface JobRead extends Resolved {
  readonly job: Job;
}

/**
 * The job named on the command line, checked, with its place looked up and every default filled in; `--month` and
 * `--setup` are followed.
 *
 * @throws Refusal with every fault of the job; Misuse where it cannot be read or has no such setup
 */
export async function readJob(operand: string, options: Pick<Options, "month" | "setup">, io: Io): Promise<JobRead> {
  const file = operand === "-" ? "standard input" : operand;
  const text = await readText(operand, io.stdin);
  const parsed = await parse(text);
  if (!parsed.ok) throw new Refusal(file, parsed.faults);
  const { resolve } = await import("@stayput/job");
  const resolved = await resolve(parsed.job, options.month === null ? {} : { month: options.month });
  if (!resolved.ok) throw new Refusal(file, resolved.faults);
  const notes = [...parsed.notes, ...resolved.notes];
  return { ...resolved, notes, job: parsed.job, study: { ...resolved.study, setups: chosen(resolved, options.setup) } };
}

/** Quantities typed in words need the units library, which takes a while to load: only where plain numbers do not do. */
async function parse(text: string): Promise<ParsedJob | Refused> {
  const { parseJobText } = await import("@stayput/job");
  const plain = parseJobText(text);
  if (plain.ok) return plain;
  const { words } = await import("@stayput/job/quantities");
  return parseJobText(text, { words });
}

function chosen({ study }: Resolved, id: string | null): Resolved["study"]["setups"] {
  if (id === null) return study.setups;
  const setups = study.setups.filter((setup) => setup.id === id);
  if (setups.length > 0) return setups;
  const known = study.setups.map((setup) => setup.id).join(", ");
  throw new Misuse(`--setup: there is no setup ${JSON.stringify(id.slice(0, 60))}; accepted: ${known}`);
}
