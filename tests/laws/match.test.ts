import { describe, expect, it } from "vitest";
import { climateOf, places } from "../../packages/catalogue/src/index.ts";
import { match } from "../../packages/sim/src/answers/match.ts";
import { morningOf } from "../../packages/sim/src/answers/matchSeen.ts";
import type { MatchExplanation, Observation } from "../../packages/sim/src/answers/matchTypes.ts";
import { harvest, newFound, planSetup, planStay, run, shine, skyOf } from "../../packages/sim/src/stay/index.ts";
import type { Setup } from "../../packages/sim/src/study.ts";
import { familyFridge } from "../fixtures/loads.ts";
import { openCamp, ordinaryLoads, setup, study, twoAgm } from "../fixtures/stays.ts";

/** Draws that the matching sees, as many as when not told; the sky that "really" came is of another seed. */
const skies = { seed: 1, draws: 200 };
/** Enough to tell two widths apart. */
const fewer = { seed: 1, draws: 80 };
const stated = setup(twoAgm, 250);

interface Truth {
  readonly id: MatchExplanation["id"];
  readonly value: number;
  readonly fitted: Setup;
  /** share of the sun that is left */
  readonly keeps: number;
}
const inCondition = (value: number): Truth => ({
  id: "condition",
  value,
  fitted: setup({ ...twoAgm, condition: value }, 250),
  keeps: 1,
});
const withFridge = (value: number): Truth => {
  const rated_Wh_day = familyFridge.rated_Wh_day * value;
  const compressor_W = Math.max(familyFridge.compressor_W, (rated_Wh_day / 24) * 1.05);
  const fridge = { ...familyFridge, rated_Wh_day, compressor_W };
  return { id: "fridge", value, fitted: setup(twoAgm, 250, [fridge, ...ordinaryLoads]), keeps: 1 };
};
const inShade = (value: number): Truth => ({ id: "shade", value, fitted: stated, keeps: 1 - value });

/** One named place after another, so that no climate is that of the trials on which the range was chosen. */
const climateFor = (trial: number) => climateOf(places[(37 * trial) % places.length]!);

/** What its owner sees under one sky: the morning on which it is found flat; null where it lasts. */
function seenOf({ fitted, keeps }: Truth, month: number, sky: number): Observation | null {
  const nights = 30;
  const climate = climateFor(sky);
  const plan = planStay(climate, { ...openCamp, month, nights }, nights);
  const setupPlan = planSetup(plan, fitted);
  shine(plan, skyOf(plan, { seed: 20261126, draws: sky + 1 }, sky));
  harvest(setupPlan);
  const kept = setupPlan.travelled.kept.map((share) => share * keeps);
  const { drop_h } = run({ ...setupPlan.travelled, kept }, newFound());
  const flatOnMorning = morningOf(drop_h);
  return flatOnMorning >= 1 && flatOnMorning <= nights - 1
    ? { flatOnMorning, month, day: openCamp.day, climate }
    : null;
}

/** Conditions, thirsts and shades spread evenly over all that is tried (golden section), each seen once under its own sky. */
function trials(truth: (value: number) => Truth, from: number, to: number, wanted: number) {
  return Array.from({ length: 12 * wanted }, (_, i) => ({ at: (i * 0.6180339887) % 1, month: ((5 * i) % 12) + 1 }))
    .flatMap(({ at, month }, sky) => {
      const real = truth(from + (to - from) * at);
      const seen = seenOf(real, month, sky);
      return seen === null ? [] : [{ real, seen }];
    })
    .slice(0, wanted);
}

const rangeOf = (seen: readonly Observation[], id: MatchExplanation["id"], under = skies) =>
  match(study([stated]), stated, seen, under).explanations.find((each) => each.id === id)!.likely;

describe("match", { timeout: 120_000 }, () => {
  it.each([
    ["condition", inCondition, 0.2, 1],
    ["fridge", withFridge, 0.5, 2.5],
    ["shade", inShade, 0, 1],
  ] as const)("recovers the %s that was put in, within its own range, nine times in ten", (id, truth, from, to) => {
    const tried = trials(truth, from, to, 40);
    expect(tried).toHaveLength(40);
    const within = tried.filter(({ real, seen }) => {
      const likely = rangeOf([seen], id);
      return likely !== null && real.value >= likely.low && real.value <= likely.high;
    });
    console.log(`match recovers the ${id} in ${within.length} of ${tried.length}`);
    expect(within.length).toBeGreaterThanOrEqual(0.9 * tried.length);
  });

  it("says more with a second morning than with the first alone", () => {
    const pairs = trials(inCondition, 0.25, 0.9, 30).flatMap(({ real, seen }, i) => {
      const second = seenOf(real, ((seen.month + 5) % 12) + 1, 1000 + i);
      const [one, two] = [[seen], second && [seen, second]].map((all) => all && rangeOf(all, "condition", fewer));
      return one && two ? [[one.high - one.low, two.high - two.low] as const] : [];
    });
    expect(pairs.length).toBeGreaterThan(15);
    const mean = (i: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[i], 0) / pairs.length;
    console.log(
      `width of the condition's range: ${mean(0).toFixed(2)} after one morning, ${mean(1).toFixed(2)} after two`,
    );
    expect(mean(1)).toBeLessThan(0.85 * mean(0));
  });
});
