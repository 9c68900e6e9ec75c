import type { Skies } from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import { checkSizeRequest } from "./checkSizeRequest.ts";
import { checkSkies } from "./checkSkies.ts";
import { defaultSkies } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { knowLadder, laddersOf, worstOf } from "./sizeLadder.ts";
import type { SizeRequest } from "./sizeTypes.ts";
import { makeTrial, type Trial } from "./trial.ts";
import type { SizeGrid } from "./types.ts";

/**
 * The chance of lasting for every pair of a ladder, for the picture of sizes.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const chanceGrid = (
  study: Study,
  setup: Setup,
  request: SizeRequest,
  skies: Skies = defaultSkies,
): readonly SizeGrid[] => atOnce(chanceGridInParts(study, setup, request, skies));

/** The same in parts: a month's skies, then a bank of the ladder, a part. */
export function* chanceGridInParts(
  study: Study,
  setup: Setup,
  request: SizeRequest,
  skies: Skies = defaultSkies,
): InParts<readonly SizeGrid[]> {
  checkSizeRequest(request);
  checkSkies(skies);
  const trials: Trial[] = [];
  for (const month of request.months) {
    trials.push(makeTrial(study, setup, month, request.nights, skies));
    yield { progress: (0.3 * trials.length) / request.months.length };
  }
  const ladders = laddersOf(request).map((ladder) => knowLadder(trials, setup, ladder));
  const rows = ladders.reduce((sum, { banks }) => sum + banks.length, 0);
  const grids: SizeGrid[] = [];
  let done = 0;
  for (const ladder of ladders) {
    const chance: number[][] = [];
    for (let b = 0; b < ladder.banks.length; b++) {
      chance.push(ladder.arrays.map((_, a) => worstOf(ladder, b, a).chance));
      yield { progress: 0.3 + (0.7 * ++done) / rows };
    }
    grids.push({
      chemistry: ladder.chemistry,
      banks_Ah: ladder.banks.map(({ capacity_Ah }) => capacity_Ah),
      arrays_W: ladder.arrays.map(({ watts }) => watts),
      chance,
    });
  }
  return grids;
}
