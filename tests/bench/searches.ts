import { compare } from "../../packages/sim/src/answers/compare.ts";
import { match } from "../../packages/sim/src/answers/match.ts";
import { size } from "../../packages/sim/src/answers/size.ts";
import { upgrades } from "../../packages/sim/src/answers/upgrades.ts";
import { bruteGrid, arrayRung, bankRung, request, rungs } from "../fixtures/sizing.ts";
import { dryTropics, lithium, setup, study, tiredAgm, twoAgm } from "../fixtures/stays.ts";
import { cpu_ms, median } from "./timing.ts";

/** Searches over setups and candidates, each with the bank runs that it stands for. */
const skies = { seed: 1, draws: 200 };
const now = setup(twoAgm, 300);
const four = [now, setup(tiredAgm, 300), setup(lithium, 300), setup(lithium, 600)];
const seen = [{ flatOnMorning: 3, month: 6, day: 10, climate: dryTropics }];
const sizes = request({
  nights: 14,
  banks: (["agm", "lfp"] as const).flatMap((chemistry) => rungs(50, 50, 12).map((Ah) => bankRung(chemistry, Ah))),
  arrays: rungs(100, 100, 12).map(arrayRung),
});

const stay_h = 60 * 24;
const cases: readonly (readonly [string, hours: number, () => unknown])[] = [
  ["compare: 4 setups, 200 skies, 60 days", 4 * 200 * stay_h, () => compare(study(four), { skies })],
  ["upgrades: 2 changes, 200 skies, 60 days", 4 * 200 * stay_h, () => upgrades(study(four), now, four[3]!, skies)],
  ["match: third morning, 3 × 40 values", 3 * 40 * 200 * 66, () => match(study(four), now, seen, skies)],
];

/**
 * @param line prints a row
 * @param bare_ms the time that so many hours take in the bare loop
 */
export function searches(line: (name: string, ...cells: string[]) => string, bare_ms: (hours: number) => number): void {
  for (const [name, hours, ask] of cases) {
    ask();
    const taken = median([0, 1, 2].map(() => cpu_ms(ask)));
    console.log(line(name, taken.toFixed(0), (taken / bare_ms(hours)).toFixed(1)));
  }
  againstTheGrid();
}

/** The same ladder pair by pair under a tenth of the skies, ten times over. */
function againstTheGrid(): void {
  const few = { seed: 1, draws: skies.draws / 10 };
  const walked_ms = median([0, 1, 2].map(() => cpu_ms(() => size(study([now]), now, sizes, skies))));
  const grid_ms = 10 * cpu_ms(() => bruteGrid(study([now]), now, sizes, few));
  console.log(`  size: pair by pair the same ladder takes about ${(grid_ms / walked_ms).toFixed(0)} times the work`);
}
