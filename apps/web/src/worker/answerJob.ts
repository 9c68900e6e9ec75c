import { defaultHorizon_days, explainInParts, watched, type ExplainAnswer, type Study } from "@stayput/sim";
import { daysOfIt } from "./dayOfIt.ts";
import { pause } from "./pause.ts";
import type { Update } from "./protocol.ts";
import { readJob } from "./readJob.ts";

interface Asked {
  readonly study: Study;
  readonly horizon_days: number;
  readonly without?: boolean;
  readonly onFirst?: (answer: ExplainAnswer) => void;
}

/**
 * Answers one job: the average sky at once, then the drawn skies over the days that are drawn, then over the whole
 * horizon, then the days without each load. Draws are the same whatever the horizon, so what lies within the near one
 * stands when the far one comes.
 *
 * @param near false where nothing is on the bench yet: then only whole answers are told
 * @throws the signal's reason when a newer edit has come
 */
export async function answerJob(
  typed: unknown,
  near: boolean,
  tell: (update: Update) => void,
  signal: AbortSignal,
): Promise<void> {
  const started = performance.now();
  const took_ms = () => performance.now() - started;
  const read = await readJob(typed);
  signal.throwIfAborted();
  if ("faults" in read) {
    tell({ kind: "faults", faults: read.faults });
    return;
  }
  const { study, dark } = read;
  const onFirst = (answer: ExplainAnswer) =>
    tell({ kind: "average", read, answer, days: daysOfIt(study, dark), took_ms: took_ms() });
  const near_days = near ? nearHorizon_days(study) : defaultHorizon_days;
  const drawn = await explained({ study, horizon_days: near_days, onFirst }, signal);
  tell({ kind: "drawn", answer: drawn, took_ms: took_ms() });
  if (near_days < defaultHorizon_days) {
    const whole = await explained({ study, horizon_days: defaultHorizon_days }, signal);
    tell({ kind: "whole", answer: whole, took_ms: took_ms() });
  }
  const complete = await explained({ study, horizon_days: defaultHorizon_days, without: true }, signal);
  tell({ kind: "complete", answer: complete, took_ms: took_ms() });
}

/** As far as the picture of charge ever reaches: twice the nights, or a few days. */
const nearHorizon_days = ({ trip }: Study): number => Math.min(defaultHorizon_days, Math.max(2 * trip.nights, 5) + 1);

function explained(
  { study, horizon_days, without = false, onFirst }: Asked,
  signal: AbortSignal,
): Promise<ExplainAnswer> {
  return watched(explainInParts(study, { without, horizon_days }), {
    signal,
    pause,
    onPart: ({ soFar }) => soFar !== undefined && onFirst?.(soFar),
  });
}
