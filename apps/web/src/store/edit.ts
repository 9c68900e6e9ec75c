import type { Change } from "./jobStore.ts";
import { setAt, type Keys } from "./at.ts";

export interface EditDetail {
  /** what is done, in words, for the undo button */
  readonly label: string;
  readonly change: Change;
  /** edits with the same key count as one step */
  readonly merge: string | null;
}

/** Asks for a change of the job; the sheet hears it, whoever asks. */
export function edit(from: EventTarget, label: string, change: Change, merge: string | null = null): void {
  const detail: EditDetail = { label, change, merge };
  from.dispatchEvent(new CustomEvent<EditDetail>("job-edit", { detail, bubbles: true, composed: true }));
}

/** Sets one value; undefined takes it out. */
export const set = (from: EventTarget, label: string, keys: Keys, value: unknown, merge: string | null = null): void =>
  edit(from, label, (job) => setAt(job, keys, value), merge);

/** Says that a run of edits is over: leaving a field, letting go of a bar. */
export const settle = (from: EventTarget): void => {
  from.dispatchEvent(new CustomEvent("job-settle", { bubbles: true, composed: true }));
};
