/** The worker as a file of its own; the single-file build takes newWorker.inline.ts in place of this. */
export const newWorker = (): Worker =>
  new Worker(new URL("./answers.worker.ts", import.meta.url), { type: "module", name: "answers" });
