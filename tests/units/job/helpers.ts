import { parseJobText, type Fault } from "@stayput/job";
import { readFileSync } from "node:fs";

const root = new URL("../../../", import.meta.url);

/** Text of a demo job. */
export const demo = (name: "family-caravan" | "bush-camper"): string =>
  readFileSync(new URL(`shared/demo/${name}.json`, root), "utf8");

/** Text of a file of the project. */
export const projectFile = (path: string): string => readFileSync(new URL(path, root), "utf8");

export type Loose = Record<string, any>; // eslint-disable-line @typescript-eslint/no-explicit-any -- a job about to be spoilt

/** The family caravan with something changed, as text. */
export function changed(change: (job: Loose) => void): string {
  const job = JSON.parse(demo("family-caravan")) as Loose;
  change(job);
  return JSON.stringify(job, null, 2);
}

/** The faults of the family caravan with something changed. */
export function faultsOf(change: (job: Loose) => void): readonly Fault[] {
  const read = parseJobText(changed(change));
  return read.ok ? [] : read.faults;
}
