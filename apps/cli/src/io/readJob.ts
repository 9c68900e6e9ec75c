import type { Job, Resolved } from "@stayput/job";
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
  const { readJobText, resolve } = await import("@stayput/job");
  const parsed = await readJobText(text);
  if (!parsed.ok) throw new Refusal(file, parsed.faults);
  const job = { ...parsed.job, setups: [...chosenSetups(parsed.job.setups, options.setup)] };
  const resolved = await resolve(job, options.month === null ? {} : { month: options.month });
  if (!resolved.ok) throw new Refusal(file, resolved.faults);
  return { ...resolved, notes: [...parsed.notes, ...resolved.notes], job };
}

/** The setup of an id, as a list of one; all of them for null. @throws Misuse where there is none of that id */
export function chosenSetups<One extends { readonly id: string }>(
  setups: readonly One[],
  id: string | null,
  option: "setup" | "to" = "setup",
): readonly One[] {
  if (id === null) return setups;
  const found = setups.filter((setup) => setup.id === id);
  if (found.length > 0) return found;
  const known = setups.map((setup) => setup.id).join(", ");
  throw new Misuse(`--${option}: there is no setup ${JSON.stringify(id.slice(0, 60))}; accepted: ${known}`);
}

/** What was assumed of some of the setups, and of the job as a whole; what was assumed of the others is left out. */
export function notesFor({ notes, study }: JobRead, setups: readonly { readonly id: string }[]): readonly string[] {
  const others = study.setups.filter(({ id }) => !setups.some((one) => one.id === id));
  return notes.filter((note) => !others.some(({ name }) => note.startsWith(`${name}: `)));
}
