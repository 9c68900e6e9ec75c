import { drawCount, shine, type Skies } from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import { checkSkies } from "./checkSkies.ts";
import { defaultHorizon_days, defaultSkies, horizonUnder } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { planStudy } from "./planStudy.ts";
import { daysOf, spreadOf } from "./quantile.ts";
import { newTally, tallyFixed } from "./setupAnswer.ts";
import { knobsOf } from "./swayKnobs.ts";
import { tallySkies } from "./tallySkies.ts";
import type { Days } from "./types.ts";

/** What one assumption, turned by a tenth, does to the days parked; null days: not flat within the horizon. */
export interface SwayRow {
  /** "capacity", "sun", "array", "start", "bay" or "load:" and the load's id */
  readonly id: string;
  readonly name: string;
  /** as the job has it, and turned: up by a tenth, the charge on arrival down by one */
  readonly now: number;
  readonly turned: number;
  /** of `now` and `turned`, with what they are of: "Ah", "kWh/m² a day", "Wh a day as rated" */
  readonly unit: string;
  /** under the average sky */
  readonly average: Days;
  readonly averageTurned: Days;
  /** medians of the same drawn skies */
  readonly p50: Days;
  readonly p50Turned: Days;
  /** of the median, what does not run down counted as the horizon [days] */
  readonly change_days: number;
}

/** What moves one setup's days most. */
export interface SwayAnswer {
  readonly setup: string;
  readonly draws: number;
  readonly horizon_days: number;
  /** greatest change first */
  readonly rows: readonly SwayRow[];
}

/**
 * How far the days of a setup hang on each assumption: one after another is turned by a tenth, under the same skies, all
 * else as it is. A full bank cannot arrive fuller, so the charge on arrival is turned down.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const sway = (study: Study, setup: Setup, skies: Skies = defaultSkies): SwayAnswer =>
  atOnce(swayInParts(study, setup, skies));

/** The same in parts, ten draws a part. */
export function* swayInParts(study: Study, setup: Setup, skies: Skies = defaultSkies): InParts<SwayAnswer> {
  checkSkies(skies);
  const horizon_days = horizonUnder(skies, defaultHorizon_days);
  const alone = { ...study, setups: [setup] };
  const knobs = knobsOf(alone.trip, alone.climate, setup);
  const runs = knobs.length + 1;
  const was = yield* lasted(alone, skies, horizon_days, 0, runs);
  const capped = (days: Days) => days ?? horizon_days;
  const rows: SwayRow[] = [];
  for (const { turn, ...knob } of knobs) {
    const is = yield* lasted(turn(alone), skies, horizon_days, (rows.length + 1) / runs, runs);
    rows.push({
      ...knob,
      average: was.average,
      averageTurned: is.average,
      p50: was.p50,
      p50Turned: is.p50,
      change_days: capped(is.p50) - capped(was.p50),
    });
  }
  rows.sort((a, b) => Math.abs(b.change_days) - Math.abs(a.change_days));
  return { setup: setup.id, draws: drawCount(skies), horizon_days, rows };
}

/** Days of a study's one setup, under the average sky and in the median; its progress is a run's part of the whole. */
function* lasted(
  study: Study,
  skies: Skies,
  horizon_days: number,
  from: number,
  runs: number,
): Generator<{ readonly progress: number }, { readonly average: Days; readonly p50: Days }, void> {
  const { stay, setups } = planStudy(study, horizon_days);
  const tally = newTally(setups[0]!, drawCount(skies), { without: false, band: false });
  shine(stay, stay.meanClearness);
  tallyFixed(tally);
  for (const { progress } of tallySkies(stay, skies, [tally])) yield { progress: from + progress / runs };
  return { average: daysOf(tally.average.found.drop_h), p50: spreadOf(tally.drop_h).p50 };
}
