import { proxy, wrap } from "comlink";
import type { RemoteFiles } from "../share/remoteFiles.ts";
import { newWorker } from "./newWorker.ts";
import type { Answers } from "./answers.worker.ts";
import type { LongAnswer, LongQuestion } from "./askLong.ts";
import type { LoadsFound, PlaceHit, Update } from "./protocol.ts";

/** What the page asks of a worker. */
export interface RemoteAnswers {
  readonly files: RemoteFiles;
  readonly placesFor: (text: string) => Promise<PlaceHit[]>;
  readonly placeCalled: (id: string) => Promise<PlaceHit | null>;
  readonly loadsFor: (text: string, volts_V: number) => Promise<LoadsFound>;
  readonly loadFromRow: (rowId: string, id: string) => Promise<unknown>;
  readonly stop: () => Promise<void>;
  readonly answer: (job: unknown, near: boolean, tell: (update: Update) => void) => Promise<void>;
  readonly ask: (
    job: unknown,
    question: LongQuestion,
    onProgress: (progress: number) => void,
  ) => Promise<LongAnswer | null>;
}

/**
 * A worker that answers; each has its own thread. Wrapped in plain functions, since a proxy seems to have every property
 * and so passes for a template's directive.
 */
export function startAnswers(): RemoteAnswers {
  const remote = wrap<Answers>(newWorker());
  return {
    files: {
      readText: (text) => remote.readText(text),
      readLink: (fragment) => remote.readLink(fragment),
      packLink: (job) => remote.packLink(job),
      hoursCsv: (job, setup) => remote.hoursCsv(job, setup),
      answerJson: (job) => remote.answerJson(job),
    },
    placesFor: (text) => remote.placesFor(text),
    placeCalled: (id) => remote.placeCalled(id),
    loadsFor: (text, volts_V) => remote.loadsFor(text, volts_V),
    loadFromRow: (rowId, id) => remote.loadFromRow(rowId, id),
    stop: () => remote.stop(),
    answer: (job, near, tell) => remote.answer(job, near, proxy(tell)),
    ask: (job, question, onProgress) => remote.ask(job, question, proxy(onProgress)),
  };
}
