import { mustBeWhole } from "../numeric/must.ts";
import type { Skies } from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import { checkSkies } from "./checkSkies.ts";
import { defaultSkies } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { posteriorOf } from "./matchPosterior.ts";
import { questionsFor, type Question } from "./matchQuestions.ts";
import { sayMatch } from "./matchSaid.ts";
import { prepareSeen, seenShares, type Seen } from "./matchSeen.ts";
import type { MatchAnswer, MatchExplanation, Observation, SeenShares } from "./matchTypes.ts";

/**
 * What would explain that a bank was found flat on a certain morning: its real condition, the fridge's real consumption,
 * or shade; each with its range over the drawn skies, all else as the job says. Every value of an even spread (a flat
 * prior) is weighed by the share of skies under which the loads drop in the day before that morning; several observations
 * multiply.
 *
 * How far to trust the ranges: tried on 2250 made-up cases that they were not chosen on (298 places, all months, AGM and
 * lithium, with and without shade and drives, one morning or two, each value put in alone and seen under a sky of its own),
 * they held it in 94 to 96 of 100, alike for condition, fridge and shade. They are too narrow for a bank that lasted over
 * ten mornings if skies are few (80 of 100 held with 80 skies, 94 with 200) or if spells of weather last longer than the
 * climate says; and they know nothing of two things being wrong at once.
 * @throws RangeError where there is nothing to match, or a morning is not 1 to 60
 */
export const match = (
  study: Study,
  setup: Setup,
  seen: readonly Observation[],
  skies: Skies = defaultSkies,
): MatchAnswer => atOnce(matchInParts(study, setup, seen, skies));

/** The same in parts: an observation's skies, then a value of a question, a part. */
export function* matchInParts(
  study: Study,
  setup: Setup,
  observations: readonly Observation[],
  skies: Skies = defaultSkies,
): InParts<MatchAnswer> {
  checkSeen(observations);
  checkSkies(skies);
  const seen: Seen[] = [];
  for (const observation of observations) {
    seen.push(prepareSeen(study, setup, observation, skies));
    yield { progress: (0.3 * seen.length) / observations.length };
  }
  const asked = questionsFor(setup);
  const columns: number[][] = [];
  for (const question of asked) {
    columns.push(yield* columnOf(question, setup, seen, columns.length, asked.length));
  }
  const stated = seen.map((one) => seenShares(one, setup, 1));
  const explanations = explanationsOf(asked, setup, columns);
  return {
    asStated: stated.reduce((product, { then }) => product * then, 1),
    stated,
    explanations,
    said: sayMatch(observations, stated, explanations),
  };
}

function checkSeen(seen: readonly Observation[]): void {
  if (seen.length === 0) {
    throw new RangeError("match must name at least one morning on which the bank was flat, got none");
  }
  seen.forEach(({ flatOnMorning, month, day }, i) => {
    mustBeWhole(`match[${i}].flatOnMorning`, flatOnMorning, 1, 60);
    mustBeWhole(`match[${i}].month`, month, 1, 12);
    mustBeWhole(`match[${i}].day`, day, 1, 31);
  });
}

/** For each value tried, the share of skies under which all that was seen happens. */
function* columnOf(
  { values, putIn, keeps }: Question,
  setup: Setup,
  seen: readonly Seen[],
  done: number,
  questions: number,
): Generator<{ progress: number }, number[], void> {
  const column: number[] = [];
  for (const value of values) {
    const shares = seen.map((one): SeenShares => seenShares(one, putIn(setup, value), keeps(value)));
    column.push(shares.reduce((product, { then }) => product * then, 1));
    yield { progress: 0.3 + (0.7 * (done + column.length / values.length)) / questions };
  }
  return column;
}

function explanationsOf(
  asked: readonly Question[],
  setup: Setup,
  columns: readonly (readonly number[])[],
): MatchExplanation[] {
  const evidence = columns.map((column) => column.reduce((sum, share) => sum + share, 0) / column.length);
  const whole = evidence.reduce((sum, value) => sum + value, 0);
  return asked
    .map(({ id, name, unit, values, stated }, i) => ({
      id,
      name,
      unit,
      stated: stated(setup),
      likely: posteriorOf(values, columns[i]!),
      plausibility: whole > 0 ? evidence[i]! / whole : 0,
      tried: values.map((value, v) => ({ value, share: columns[i]![v]! })),
    }))
    .sort((a, b) => b.plausibility - a.plausibility);
}
