import { explainInParts, watched, type ExplainAnswer, type Study } from "@stayput/sim";
import { daysOfIt } from "./dayOfIt.ts";
import { pause } from "./pause.ts";
import type { Update } from "./protocol.ts";
import { readJob } from "./readJob.ts";

/**
 * Answers one job in three steps: the average sky at once, then the drawn skies, then the days without each load.
 * @throws the signal's reason when a newer edit has come
 */
export async function answerJob(typed: unknown, tell: (update: Update) => void, signal: AbortSignal): Promise<void> {
  const started = performance.now();
  const took_ms = () => performance.now() - started;
  const read = await readJob(typed);
  signal.throwIfAborted();
  if ("faults" in read) return tell({ kind: "faults", faults: read.faults });
  const { study, dark } = read;
  const first = (answer: ExplainAnswer) =>
    tell({ kind: "average", read, answer, days: daysOfIt(study, dark), took_ms: took_ms() });
  const drawn = await explained(study, false, signal, first);
  tell({ kind: "drawn", answer: drawn, took_ms: took_ms() });
  const complete = await explained(study, true, signal);
  tell({ kind: "complete", answer: complete, took_ms: took_ms() });
}

function explained(
  study: Study,
  without: boolean,
  signal: AbortSignal,
  onFirst?: (answer: ExplainAnswer) => void,
): Promise<ExplainAnswer> {
  return watched(explainInParts(study, { without }), {
    signal,
    pause,
    onPart: ({ soFar }) => soFar !== undefined && onFirst?.(soFar),
  });
}
