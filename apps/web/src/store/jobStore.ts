import type { JobInput } from "@stayput/job";
import { begun, edited, redone, settled, undone, type History } from "./history.ts";

export type Change = (job: JobInput) => JobInput;

/** The one place where the job is kept, as typed, with its history. What is shown follows from it. */
export class JobStore {
  #history: History<JobInput>;
  readonly #listeners = new Set<() => void>();

  constructor(job: JobInput, label = "Open") {
    this.#history = begun(job, label);
  }

  get job(): JobInput {
    return this.#history.now.job;
  }
  /** what undo would take back, in words; null where there is nothing */
  get undoes(): string | null {
    return this.#history.past.length > 0 ? this.#history.now.label : null;
  }
  get redoes(): string | null {
    return this.#history.future[0]?.label ?? null;
  }

  edit(label: string, change: Change, merge: string | null = null): void {
    const job = change(this.job);
    if (job !== this.job) this.#to(edited(this.#history, job, label, merge));
  }
  /** Ends a run of edits that count as one. */
  settle(): void {
    this.#history = settled(this.#history);
  }
  undo(): void {
    this.#to(undone(this.#history));
  }
  redo(): void {
    this.#to(redone(this.#history));
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #to(history: History<JobInput>): void {
    if (history === this.#history) return;
    this.#history = history;
    for (const listener of this.#listeners) listener();
  }
}
