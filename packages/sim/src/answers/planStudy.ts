import { planSetup, planStay, type SetupPlan, type StayPlan } from "../stay/index.ts";
import type { Study } from "../study.ts";

/**
 * A study with all but the sky worked out, for several answers to be asked of it one after another. Each answer refills
 * its light and its sun, so no two of them may run in turns, but that an answer in parts may wait at its first part.
 */
export interface StudyPlan {
  readonly study: Study;
  readonly stay: StayPlan;
  readonly setups: readonly SetupPlan[];
}

/**
 * @param horizon_days how far runs look, 1 to 366, and never less than the trip's nights
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function planStudy(study: Study, horizon_days: number): StudyPlan {
  const stay = planStay(study.climate, study.trip, horizon_days);
  return { study, stay, setups: study.setups.map((setup) => planSetup(stay, setup)) };
}
