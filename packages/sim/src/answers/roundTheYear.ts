import { drawCount, harvest, newFound, planSetup, planStay, run, shine, skyOf, type Skies } from "../stay/index.ts";
import type { Study } from "../study.ts";
import { checkSkies } from "./checkSkies.ts";
import { defaultHorizon_days, defaultSkies, horizonUnder } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { daysOf, spreadOf } from "./quantile.ts";
import { tripIn } from "./tripIn.ts";
import type { YearAnswer } from "./types.ts";

type Month = YearAnswer["setups"][number]["months"][number];

/**
 * Days and chance of the same trip begun in each month of the year, on the same day of it or its last.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const roundTheYear = (
  study: Study,
  skies: Skies = defaultSkies,
  horizon_days = defaultHorizon_days,
): YearAnswer => atOnce(roundTheYearInParts(study, skies, horizon_days));

/** The same, a month a part. */
export function* roundTheYearInParts(
  study: Study,
  skies: Skies = defaultSkies,
  horizon_days = defaultHorizon_days,
): InParts<YearAnswer> {
  checkSkies(skies);
  const looked_days = horizonUnder(skies, horizon_days);
  const months: Month[][] = study.setups.map(() => []);
  for (let month = 1; month <= 12; month++) {
    monthOf(study, month, skies, looked_days).forEach((answer, i) => months[i]!.push(answer));
    yield { progress: month / 12 };
  }
  return { setups: study.setups.map(({ id, name }, i) => ({ id, name, months: months[i]! })) };
}

function monthOf(study: Study, month: number, skies: Skies, horizon_days: number): Month[] {
  const plan = planStay(study.climate, tripIn(study.trip, month), horizon_days);
  const found = newFound();
  const setups = study.setups.map((setup) => planSetup(plan, setup));
  const draws = drawCount(skies);
  const drop_h = setups.map(() => new Float64Array(draws));
  const lasted = setups.map(() => 0);
  shine(plan, plan.meanClearness);
  const average = setups.map((setupPlan) => {
    harvest(setupPlan);
    return run(setupPlan.parked, found, { stopAtDrop: true }).drop_h;
  });
  for (let draw = 0; draw < draws; draw++) {
    shine(plan, skyOf(plan, skies, draw));
    setups.forEach((setupPlan, i) => {
      harvest(setupPlan);
      drop_h[i]![draw] = run(setupPlan.parked, found, { stopAtDrop: true }).drop_h;
      if (!(run(setupPlan.travelled, found, { stopAtDrop: true }).drop_h >= 0)) lasted[i]!++;
    });
  }
  return setups.map((_, i) => ({
    month,
    average: daysOf(average[i]!),
    drawn: spreadOf(drop_h[i]!),
    chance: lasted[i]! / draws,
  }));
}
