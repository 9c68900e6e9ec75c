import { drawCount, harvest, shine, skyOf, type Skies, type StayPlan } from "../stay/index.ts";
import { tallyDraw, type Tally } from "./setupAnswer.ts";

/** How often progress is told: every so many draws. */
export const drawsAPart = 10;

/** Every drawn sky over every setup, ten draws a part. */
export function* tallySkies(
  plan: StayPlan,
  skies: Skies,
  tallies: readonly Tally[],
): Generator<{ readonly progress: number }, void, void> {
  const draws = drawCount(skies);
  for (let draw = 0; draw < draws; draw++) {
    shine(plan, skyOf(plan, skies, draw));
    for (const tally of tallies) {
      harvest(tally.setupPlan);
      tallyDraw(tally, draw);
    }
    if ((draw + 1) % drawsAPart === 0) yield { progress: (draw + 1) / draws };
  }
}
