/** One state of the job and what was done to reach it. */
export interface Entry<Job> {
  readonly job: Job;
  /** what was done, in words: "Change nights" */
  readonly label: string;
  /** edits with the same key follow one another as one: typing in a field, dragging a bar */
  readonly merge: string | null;
}

/** Every state of the job, in order; nothing is ever changed in place. */
export interface History<Job> {
  readonly past: readonly Entry<Job>[];
  readonly now: Entry<Job>;
  readonly future: readonly Entry<Job>[];
}

/** Most steps back. */
const longest = 300;

export const begun = <Job>(job: Job, label: string): History<Job> => ({
  past: [],
  now: { job, label, merge: null },
  future: [],
});

export function edited<Job>(history: History<Job>, job: Job, label: string, merge: string | null): History<Job> {
  const { past, now } = history;
  const entry = { job, label, merge };
  if (merge !== null && merge === now.merge) return { past, now: entry, future: [] };
  return { past: [...past, now].slice(-longest), now: entry, future: [] };
}

/** Ends a run of merged edits: the next one is a step of its own. */
export const settled = <Job>(history: History<Job>): History<Job> => ({
  ...history,
  now: { ...history.now, merge: null },
});

export function undone<Job>(history: History<Job>): History<Job> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return { past: history.past.slice(0, -1), now: { ...before, merge: null }, future: [history.now, ...history.future] };
}

export function redone<Job>(history: History<Job>): History<Job> {
  const [next, ...later] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.now], now: { ...next, merge: null }, future: later };
}
