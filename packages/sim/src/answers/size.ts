import { drawCount, type Skies } from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import { checkSizeRequest } from "./checkSizeRequest.ts";
import { checkSkies } from "./checkSkies.ts";
import { defaultSkies } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import {
  allThatLast,
  byPreference,
  fits,
  nearestMiss,
  pointAt,
  preferred,
  type Place,
  type Sizing,
  type Walked,
} from "./sizeChoice.ts";
import { knowLadder, laddersOf, pointOf, worstOf, type KnownLadder } from "./sizeLadder.ts";
import { whatStandsInTheWay } from "./sizeObstacle.ts";
import { reasonForPick, saidOfStep } from "./sizeReason.ts";
import type { SizeAnswer, SizeRequest, SizeStaircase, SizeStep } from "./sizeTypes.ts";
import { chargerFor_A, makeTrial, reaches, type Trial } from "./trial.ts";
import type { SizePoint } from "./types.ts";

/**
 * The smallest banks and arrays that last the nights with the chance asked, in the worst of the months asked. Survival
 * grows with both, so the walk goes down the staircase between "lasts" and "does not", and runs no pair under a sky that
 * a smaller or a larger pair has settled.
 * @param setup whose loads, feed, volts and mounting the candidates take over
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const size = (study: Study, setup: Setup, request: SizeRequest, skies: Skies = defaultSkies): SizeAnswer =>
  atOnce(sizeInParts(study, setup, request, skies));

/** The same in parts: a month's skies, then a bank of the ladder, a part. */
export function* sizeInParts(
  study: Study,
  setup: Setup,
  request: SizeRequest,
  skies: Skies = defaultSkies,
): InParts<SizeAnswer> {
  checkSizeRequest(request);
  checkSkies(skies);
  const trials: Trial[] = [];
  for (const month of request.months) {
    trials.push(makeTrial(study, setup, month, request.nights, skies));
    yield { progress: (0.4 * trials.length) / request.months.length };
  }
  const ladders = laddersOf(request).map((ladder) => knowLadder(trials, setup, ladder));
  const walked: Walked[] = [];
  for (const ladder of ladders) {
    walked.push({ ladder, smallest: yield* walkDown(ladder, request.chance, walked.length, ladders.length) });
  }
  return answerOf({ study, setup, request, skies, trials, walked });
}

function answerOf(sizing: Sizing): SizeAnswer {
  const { setup, request, skies, trials, walked } = sizing;
  const staircases = walked.map(staircaseOf);
  const place = preferred(allThatLast(walked), request);
  const pick = place === null ? null : pointAt(place);
  const miss = place === null ? nearestMiss(ladderOfEach(walked), request) : null;
  const fitting = fittingOf(staircases, pick, request);
  const shown = place ?? miss;
  const obstacle = pick === null ? whatStandsInTheWay(sizing, miss) : null;
  const pairs = walked.reduce((sum, { ladder }) => sum + ladder.banks.length * ladder.arrays.length, 0);
  return {
    nights: request.nights,
    chance: request.chance,
    months: request.months,
    staircases,
    fitting,
    pick,
    worstMonth: shown === null ? null : worstOf(shown.ladder, shown.b, shown.a).month,
    charger_A: pick === null || pick.array_W === 0 ? null : Math.ceil(chargerFor_A(pick.array_W, setup.bank.nominal_V)),
    inTheWay: obstacle?.inTheWay ?? [],
    reason: obstacle?.said ?? reasonForPick(request, place!, fitting.length, setup.bank.nominal_V),
    steps: place === null ? [] : stepsFrom(place),
    nearest: miss === null ? null : pointAt(miss),
    bankRuns: trials.reduce((sum, trial) => sum + trial.count.runs, 0),
    gridRuns: pairs * trials.length * drawCount(skies),
  };
}

/** From the smallest bank with the largest array: while it lasts, a smaller array; when it does not, a larger bank. */
function* walkDown(
  ladder: KnownLadder,
  chance: number,
  done: number,
  ladders: number,
): Generator<{ progress: number }, readonly number[], void> {
  const smallest: number[] = [];
  let a = ladder.arrays.length;
  for (let b = 0; b < ladder.banks.length; b++) {
    while (a > 0 && ladder.months.every((known) => reaches(known, b, a - 1, chance))) a--;
    smallest.push(a);
    yield { progress: 0.4 + (0.55 * (done + (b + 1) / ladder.banks.length)) / ladders };
  }
  return smallest;
}

const ladderOfEach = (walked: readonly Walked[]): KnownLadder[] => walked.map(({ ladder }) => ladder);

/** A corner stands at each bank that needs less array than the bank below it. */
function staircaseOf({ ladder, smallest }: Walked): SizeStaircase {
  const corners = smallest.flatMap((a, b) =>
    a < (smallest[b - 1] ?? ladder.arrays.length) ? [pointOf(ladder, b, a)] : [],
  );
  return { chemistry: ladder.chemistry, corners };
}

function fittingOf(staircases: readonly SizeStaircase[], pick: SizePoint | null, request: SizeRequest): SizePoint[] {
  if (pick === null) return [];
  const corners = staircases.flatMap(({ corners }) => corners).filter((point) => fits(point, request));
  const same = (point: SizePoint) =>
    point.chemistry === pick.chemistry && point.bank_Ah === pick.bank_Ah && point.array_W === pick.array_W;
  return [pick, ...corners.filter((point) => !same(point)).sort(byPreference)];
}

function stepsFrom({ ladder, b, a }: Place): SizeStep[] {
  const pick = pointOf(ladder, b, a);
  const tried = [
    ["smaller-bank", b - 1, a],
    ["larger-bank", b + 1, a],
    ["smaller-array", b, a - 1],
    ["larger-array", b, a + 1],
  ] as const;
  return tried
    .filter(([, bank, array]) => ladder.banks[bank] !== undefined && ladder.arrays[array] !== undefined)
    .map(([change, bank, array]) => {
      const point = pointOf(ladder, bank, array);
      return { change, point, said: saidOfStep(change, point, pick) };
    });
}
