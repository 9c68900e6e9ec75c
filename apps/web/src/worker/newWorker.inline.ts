import InlineWorker from "./answers.worker.ts?worker&inline";

/** The worker from within the page itself, for a page that is opened from disk. */
export const newWorker = (): Worker => new InlineWorker({ name: "answers" });
