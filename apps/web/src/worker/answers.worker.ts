import { expose } from "comlink";
import { files } from "../share/inWorker.ts";
import { answerJob } from "./answerJob.ts";
import type { LongAnswer, LongQuestion } from "./askLong.ts";
import { loadFromRow, loadsFor, placeCalled, placesFor } from "./lookUp.ts";
import type { Update } from "./protocol.ts";

let running = new AbortController();

/** Whatever runs is stopped between two of its parts. */
function begin(): AbortSignal {
  running.abort();
  running = new AbortController();
  return running.signal;
}

const answers = {
  ...files,
  placesFor,
  placeCalled,
  loadsFor,
  loadFromRow,
  stop: () => void begin(),
  /** Answers a job; a newer call stops an older one. Never throws: what went wrong is told. */
  async answer(typed: unknown, near: boolean, tell: (update: Update) => void): Promise<void> {
    const signal = begin();
    try {
      await answerJob(typed, near, tell, signal);
    } catch (error) {
      if (!signal.aborted) tell({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
    }
  },
  /** A long question, with progress. Null where a newer one has stopped it. */
  async ask(
    typed: unknown,
    question: LongQuestion,
    onProgress: (progress: number) => void,
  ): Promise<LongAnswer | null> {
    const signal = begin();
    try {
      const { askLong } = await import("./askLong.ts");
      return await askLong(typed, question, onProgress, signal);
    } catch (error) {
      if (signal.aborted) return null;
      throw error;
    }
  },
};

export type Answers = typeof answers;

expose(answers);
