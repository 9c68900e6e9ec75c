import type { Fault } from "@stayput/job";

/** The command was called in a way that it cannot follow: exit 2. */
export class Misuse extends Error {}

/** What the command was given to read is not valid: exit 1, with every fault. */
export class Refusal extends Error {
  constructor(
    /** the file, or "standard input" */
    readonly file: string,
    readonly faults: readonly (Pick<Fault, "message"> & Partial<Fault>)[],
  ) {
    super(`${file} is not valid`);
  }
}
