import { mustBeWhole, mustLie } from "../numeric/must.ts";
import { drawCount, planSetup, planStay, shine, type Skies } from "../stay/index.ts";
import type { Study } from "../study.ts";
import { checkSkies } from "./checkSkies.ts";
import { sayGain } from "./compareSaid.ts";
import type { CompareAnswer, ComparedSetup, PairedGain } from "./compareTypes.ts";
import { defaultHorizon_days, defaultSkies, horizonUnder, type ExplainOptions } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { nearestRank } from "./quantile.ts";
import { refillHours } from "./refill.ts";
import { newTally, setupAnswer, tallyFixed, type Tally } from "./setupAnswer.ts";
import { tallySkies } from "./tallySkies.ts";

/** As for `explain`, and what mass may still be added. */
export interface CompareOptions extends Omit<ExplainOptions, "without" | "plan"> {
  /** mass that may still be added to what is fitted now [kg]; null: not known */
  readonly payload_kg?: number | null | undefined;
}

/**
 * The setups side by side under the same skies. Differences are paired, sky by sky, against the first setup.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const compare = (study: Study, options: CompareOptions = {}): CompareAnswer =>
  atOnce(compareInParts(study, options));

/** The same, in parts, ten draws a part. */
export function* compareInParts(study: Study, options: CompareOptions = {}): InParts<CompareAnswer> {
  const skies = options.skies ?? defaultSkies;
  checkCompared(study, skies, options.payload_kg ?? null);
  const draws = drawCount(skies);
  const plan = planStay(study.climate, study.trip, horizonUnder(skies, options.horizon_days ?? defaultHorizon_days));
  const tallies = study.setups.map((setup) => newTally(planSetup(plan, setup), draws, { without: false, band: false }));
  shine(plan, plan.meanClearness);
  for (const tally of tallies) tallyFixed(tally);
  yield* tallySkies(plan, skies, tallies);
  return {
    seed: "rows" in skies ? null : skies.seed,
    draws,
    horizon_days: plan.hours / 24,
    nights: plan.trip.nights,
    setups: tallies.map((tally, i) => compared(tally, i === 0 ? null : tallies[0]!, options.payload_kg ?? null)),
  };
}

function checkCompared({ setups }: Study, skies: Skies, payload_kg: number | null): void {
  checkSkies(skies);
  mustBeWhole("setups", setups.length, 1, 100);
  if (payload_kg !== null) mustLie("payload_kg", payload_kg, -1e6, 1e6);
}

function compared(tally: Tally, first: Tally | null, payload_kg: number | null): ComparedSetup {
  const { setup } = tally.setupPlan;
  const answer = setupAnswer(tally);
  const horizon_h = tally.setupPlan.parked.hours;
  const gain = first === null ? null : pairedGain(tally.drop_h, first.drop_h, horizon_h);
  return {
    id: setup.id,
    name: setup.name,
    days: answer.days,
    reserveDays: answer.reserveDays,
    chanceOfLasting: answer.chanceOfLasting,
    flattenedBy: answer.use_Wh_day.byLoad.find(({ Wh_day }) => Wh_day > 0) ?? null,
    use_Wh_day: answer.use_Wh_day.total,
    sun_Wh_day: answer.sun_Wh_day,
    refill_h: refillHours(tally.setupPlan),
    price: setup.price,
    mass_kg: setup.mass_kg,
    payloadLeft_kg: payload_kg === null ? null : payload_kg - setup.mass_kg,
    cautions: answer.cautions,
    gain,
    said: gain === null ? null : sayGain(setup.name, first!.setupPlan.setup.name, gain, horizon_h / 24),
  };
}

/**
 * How many days one setup lasts beyond another, sky by sky.
 * @param hours until loads dropped, a sky each; NaN where they never did within `horizon_h`
 * @param against the same of the other
 * @param horizon_h what a run that outlasts it counts as [h]
 */
export function pairedGain(hours: Float64Array, against: Float64Array, horizon_h: number): PairedGain {
  const capped = (h: number) => (h >= 0 ? h : horizon_h);
  const gains = hours.map((h, draw) => (capped(h) - capped(against[draw]!)) / 24).sort();
  return {
    p10_days: nearestRank(gains, 0.1),
    p50_days: nearestRank(gains, 0.5),
    p90_days: nearestRank(gains, 0.9),
    mean_days: gains.reduce((sum, gain) => sum + gain, 0) / gains.length,
    least_days: gains[0]!,
    atLeast: hours.some((h) => !(h >= 0)),
  };
}
