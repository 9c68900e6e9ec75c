import { mustLie } from "../numeric/must.ts";
import { drawCount, harvest, newFound, planSetup, planStay, run, shine, skyOf } from "../stay/index.ts";
import type { Drive, SetupPlan, Skies, StayPlan } from "../stay/index.ts";
import { arrivalHour } from "../stay/stayPlan.ts";
import type { Load, Setup, Study } from "../study.ts";
import { defaultSkies } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { posteriorOf } from "./matchPosterior.ts";
import type { MatchAnswer, MatchExplanation, Observation } from "./matchTypes.ts";

/** A bank is looked at by this clock hour; what dropped after it was found the next morning (chosen). */
const morningHour = 9;

/** One thing that may be other than stated: the values tried, evenly spread (chosen), and how to put one in. */
interface Question {
  readonly id: MatchExplanation["id"];
  readonly name: string;
  readonly unit: string;
  readonly values: readonly number[];
  readonly stated: (setup: Setup) => number;
  readonly putIn: (setup: Setup, value: number) => Setup;
  /** share of the sun's output that the value leaves */
  readonly keeps: (value: number) => number;
}

const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((i + 0.5) * (to - from)) / count);

const questions: readonly Question[] = [
  {
    id: "condition",
    name: "the bank's real condition",
    unit: "of rated capacity",
    values: spread(0.2, 1, 40),
    stated: ({ bank }) => bank.condition,
    putIn: (setup, condition) => ({ ...setup, bank: { ...setup.bank, condition } }),
    keeps: () => 1,
  },
  {
    id: "fridge",
    name: "the fridge's real consumption",
    unit: "times rated",
    values: spread(0.5, 2.5, 40),
    stated: () => 1,
    putIn: (setup, times) => ({ ...setup, loads: setup.loads.map((load) => thirstier(load, times)) }),
    keeps: () => 1,
  },
  {
    id: "shade",
    name: "shade or dirt on the panels",
    unit: "of the sun lost",
    values: spread(0, 1, 40),
    stated: () => 0,
    putIn: (setup) => setup,
    keeps: (lost) => 1 - lost,
  },
];

/** A compressor fridge that takes so many times its rating, and whose compressor can. */
function thirstier(load: Load, times: number): Load {
  if (load.kind !== "compressor-fridge") return load;
  const rated_Wh_day = load.rated_Wh_day * times;
  return { ...load, rated_Wh_day, compressor_W: Math.max(load.compressor_W, (rated_Wh_day / 24) * 1.05) };
}

/**
 * What would explain that a bank was found flat on a certain morning: its real condition, the fridge's real consumption,
 * or shade; each with its range over the drawn skies, all else as the job says. Every value of an even spread (a flat
 * prior) is weighed by the share of skies under which the loads drop in the day before that morning; several observations
 * multiply.
 * @throws RangeError where there is nothing to match, or a morning is not 1 to 60
 */
export const match = (
  study: Study,
  setup: Setup,
  seen: readonly Observation[],
  skies: Skies = defaultSkies,
): MatchAnswer => atOnce(matchInParts(study, setup, seen, skies));

export function* matchInParts(
  study: Study,
  setup: Setup,
  seen: readonly Observation[],
  skies: Skies = defaultSkies,
): InParts<MatchAnswer> {
  if (seen.length === 0)
    throw new RangeError("match must name at least one morning on which the bank was flat, got none");
  for (const { flatOnMorning } of seen) mustLie("match.flatOnMorning", flatOnMorning, 1, 60);
  const asked = questions.filter(
    ({ id }) => id !== "fridge" || setup.loads.some(({ kind }) => kind === "compressor-fridge"),
  );
  const shares: number[][] = [];
  for (const question of asked) {
    shares.push(shareBy(study, setup, seen, skies, question));
    yield { progress: shares.length / (asked.length + 1) };
  }
  const asStated = sharesOf(study, setup, seen, skies, 1);
  const evidence = shares.map((column) => column.reduce((sum, share) => sum + share, 0) / column.length);
  const whole = evidence.reduce((sum, value) => sum + value, 0);
  const explanations = asked
    .map(({ id, name, unit, values, stated }, i): MatchExplanation => ({
      id,
      name,
      unit,
      stated: stated(setup),
      likely: posteriorOf(values, shares[i]!),
      plausibility: whole > 0 ? evidence[i]! / whole : 0,
      tried: values.map((value, v) => ({ value, share: shares[i]![v]! })),
    }))
    .sort((a, b) => b.plausibility - a.plausibility);
  return { asStated, explanations, said: sayMatch(asStated, explanations) };
}

/** For each value tried, the share of skies under which all that was seen happens. */
function shareBy(study: Study, setup: Setup, seen: readonly Observation[], skies: Skies, question: Question): number[] {
  return question.values.map((value) =>
    sharesOf(study, question.putIn(setup, value), seen, skies, question.keeps(value)),
  );
}

function sharesOf(study: Study, setup: Setup, seen: readonly Observation[], skies: Skies, keeps: number): number {
  return seen.reduce((share, one) => (share === 0 ? 0 : share * shareOfSkies(study, setup, one, skies, keeps)), 1);
}

const scratch = newFound();

function shareOfSkies(study: Study, setup: Setup, seen: Observation, skies: Skies, keeps: number): number {
  const setupPlan = planSetup(planFor(study, seen), setup);
  const kept = setupPlan.plan.kept.map((share) => share * keeps);
  const drive: Drive = { ...setupPlan.travelled, kept };
  const until_h = seen.flatOnMorning * 24 - arrivalHour + morningHour;
  const from_h = Math.max(0, until_h - 24);
  let happened = 0;
  for (let draw = 0; draw < drawCount(skies); draw++) {
    lightUnder(setupPlan, skies, draw);
    const { drop_h } = run(drive, scratch, { stopAtDrop: true });
    if (drop_h >= from_h && drop_h < until_h) happened++;
  }
  return happened / drawCount(skies);
}

function lightUnder(setupPlan: SetupPlan, skies: Skies, draw: number): void {
  shine(setupPlan.plan, skyOf(setupPlan.plan, skies, draw));
  harvest(setupPlan);
}

function planFor({ trip }: Study, { climate, month, day, flatOnMorning }: Observation): StayPlan {
  return planStay(climate, { ...trip, month, day, nights: flatOnMorning }, flatOnMorning);
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

function sayMatch(asStated: number, [first]: readonly MatchExplanation[]): string {
  const before = `With everything as stated it happens under ${percent(asStated)} of skies.`;
  if (first === undefined || first.likely === null) {
    return `${before} Neither the bank's condition, nor the fridge, nor shade alone explains it: look for another load, a charge that never arrived, or a different start.`;
  }
  const { low, middle, high } = first.likely;
  const value = (x: number) => (first.id === "fridge" ? x.toFixed(1) : percent(x));
  return `${before} Most plausible: ${first.name}, ${value(middle)} ${first.unit} (${value(low)} to ${value(high)}).`;
}
