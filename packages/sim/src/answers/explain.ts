import { drawCount, shine, type Skies, type StayPlan } from "../stay/index.ts";
import { arrivalHour } from "../stay/stayPlan.ts";
import type { Study } from "../study.ts";
import { checkSkies } from "./checkSkies.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { planStudy, type StudyPlan } from "./planStudy.ts";
import { newTally, setupAnswer, tallyFixed, type Tally } from "./setupAnswer.ts";
import { tallySkies } from "./tallySkies.ts";
import type { ExplainAnswer } from "./types.ts";

/** How far runs look when not told [days]. */
export const defaultHorizon_days = 60;
/** The skies when none are asked for. */
export const defaultSkies: Skies = { seed: 1, draws: 200 };

/** Under which skies (200 drawn ones when left out), how far to look [days], and what to leave out. */
export interface ExplainOptions {
  readonly skies?: Skies | undefined;
  readonly horizon_days?: number | undefined;
  /** `study` as `planStudy` made it ready, to spare doing so again; the horizon is then its own */
  readonly plan?: StudyPlan | undefined;
  /** false leaves out "days without each load", the dearest part */
  readonly without?: boolean | undefined;
}

/**
 * How long each setup lasts, where the energy goes, what flattens it and what would change it.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const explain = (study: Study, options: ExplainOptions = {}): ExplainAnswer =>
  atOnce(explainInParts(study, options));

/** The same, in parts: the dark and average skies first, then the drawn ones as they come. */
export function* explainInParts(study: Study, options: ExplainOptions = {}): InParts<ExplainAnswer> {
  const skies = options.skies ?? defaultSkies;
  checkSkies(skies);
  if (options.plan !== undefined && options.plan.study !== study)
    throw new RangeError("plan must be of the study asked, got another's");
  const draws = drawCount(skies);
  const { stay: plan, setups } =
    options.plan ?? planStudy(study, horizonUnder(skies, options.horizon_days ?? defaultHorizon_days));
  const tallies = setups.map((setupPlan) =>
    newTally(setupPlan, draws, { without: options.without ?? true, band: true }),
  );

  shine(plan, plan.meanClearness);
  for (const tally of tallies) tallyFixed(tally);
  yield { progress: 0, soFar: answerOf(plan, skies, tallies) };

  yield* tallySkies(plan, skies, tallies);
  return answerOf(plan, skies, tallies);
}

function answerOf(plan: StayPlan, skies: Skies, tallies: readonly Tally[]): ExplainAnswer {
  return {
    seed: "rows" in skies ? null : skies.seed,
    draws: drawCount(skies),
    horizon_days: plan.hours / 24,
    nights: plan.trip.nights,
    setups: tallies.map(setupAnswer),
  };
}

/** Skies given from outside may be shorter than one would look: the horizon is then what they cover. */
export function horizonUnder(skies: Skies, wanted_days: number): number {
  if (!("rows" in skies)) return wanted_days;
  const shortest = Math.min(...skies.rows.map((row) => row.length));
  return Math.min(wanted_days, shortest - arrivalHour / 24);
}
