import { arrivalHour, drawCount, harvest, newFound, planSetup, planStay, run, shine, skyOf } from "../stay/index.ts";
import type { Drive, Skies, StayPlan } from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import type { Observation, SeenShares } from "./matchTypes.ts";

/** A bank is looked at by this clock hour; what dropped after it was found the next morning (chosen). */
const morningHour = 9;

/** An observation made ready: its stay planned and, for each sky, the setup's sun by hour, worked out once. */
export interface Seen {
  readonly plan: StayPlan;
  readonly suns: readonly Float64Array[];
  /** loads dropped at or after, and before, so many hours from arrival */
  readonly from_h: number;
  readonly until_h: number;
}

export function prepareSeen({ trip }: Study, setup: Setup, observation: Observation, skies: Skies): Seen {
  const { climate, month, day, flatOnMorning } = observation;
  const plan = planStay(climate, { ...trip, month, day, nights: flatOnMorning }, flatOnMorning);
  const setupPlan = planSetup(plan, setup);
  const suns = Array.from({ length: drawCount(skies) }, (_, draw) => {
    shine(plan, skyOf(plan, skies, draw));
    harvest(setupPlan);
    return setupPlan.travelled.sun.slice();
  });
  const until_h = flatOnMorning * 24 - arrivalHour + morningHour;
  return { plan, suns, from_h: Math.max(0, until_h - 24), until_h };
}

/** The morning on which a bank whose loads dropped so many hours after arrival is found flat, 1 the first. */
export const morningOf = (drop_h: number): number => Math.floor((drop_h + arrivalHour - morningHour) / 24) + 1;

const scratch = newFound();

/**
 * The shares of skies under which a setup goes flat before, on and after the morning seen.
 * @param setup with the arrays and solar charger that the sun was worked out for
 * @param keeps share of the sun's output that is left
 */
export function seenShares({ plan, suns, from_h, until_h }: Seen, setup: Setup, keeps: number): SeenShares {
  const { travelled } = planSetup(plan, setup);
  const kept = keeps === 1 ? travelled.kept : travelled.kept.map((share) => share * keeps);
  let before = 0;
  let then = 0;
  for (const sun of suns) {
    const drive: Drive = { ...travelled, kept, sun };
    const { drop_h } = run(drive, scratch, { stopAtDrop: true });
    if (drop_h < from_h) before++;
    else if (drop_h < until_h) then++;
  }
  const all = suns.length;
  return { before: before / all, then: then / all, after: (all - before - then) / all };
}
