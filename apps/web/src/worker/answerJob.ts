import {
  atOnce,
  dayOfItInParts,
  defaultHorizon_days,
  explainInParts,
  planStudy,
  watched,
  type ExplainAnswer,
  type Study,
  type StudyPlan,
} from "@stayput/sim";
import { pause } from "./pause.ts";
import type { Update } from "./protocol.ts";
import { readJob } from "./readJob.ts";

interface Asked {
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
  const near_days = near ? nearHorizon_days(study) : defaultHorizon_days;
  const nearPlan = planStudy(study, near_days);
  const onFirst = (answer: ExplainAnswer) => {
    const days = atOnce(dayOfItInParts(nearPlan)).map(({ hours }) => ({ hours, dark }));
    tell({ kind: "average", read, answer, days, took_ms: took_ms() });
  };
  const drawn = await explained(nearPlan, { onFirst }, signal);
  tell({ kind: "drawn", answer: drawn, took_ms: took_ms() });
  await pause(); // a newer edit need not wait for the plan of the whole horizon
  signal.throwIfAborted();
  const plan = near_days < defaultHorizon_days ? planStudy(study, defaultHorizon_days) : nearPlan;
  if (plan !== nearPlan) tell({ kind: "whole", answer: await explained(plan, {}, signal), took_ms: took_ms() });
  const complete = await explained(plan, { without: true }, signal);
  tell({ kind: "complete", answer: complete, took_ms: took_ms() });
}

/** As far as the picture of charge ever reaches: twice the nights, or a few days. */
const nearHorizon_days = ({ trip }: Study): number => Math.min(defaultHorizon_days, Math.max(2 * trip.nights, 5) + 1);

function explained(plan: StudyPlan, { without = false, onFirst }: Asked, signal: AbortSignal): Promise<ExplainAnswer> {
  return watched(explainInParts(plan.study, { plan, without }), {
    signal,
    pause,
    onPart: ({ soFar }) => soFar !== undefined && onFirst?.(soFar),
  });
}
