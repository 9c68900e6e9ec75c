import { chemistries } from "../bank/chemistries.ts";
import {
  drawCount,
  harvest,
  newFound,
  planSetup,
  planStay,
  run,
  shine,
  skyOf,
  type SetupPlan,
  type Skies,
  type StayPlan,
} from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import { checkSkies } from "./checkSkies.ts";
import { defaultHorizon_days, defaultSkies, horizonUnder } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { nearestRank } from "./quantile.ts";
import { drawsAPart } from "./tallySkies.ts";
import type { GainShares, UpgradeChange, UpgradesAnswer } from "./upgradeTypes.ts";
import { measureOf, sayUpgrades } from "./upgradesSaid.ts";

/** A change as a function: the setup with that part of it taken from the proposal. */
interface Change extends UpgradeChange {
  readonly make: (setup: Setup) => Setup;
}

/**
 * What each difference between a setup and a proposal is worth: alone, all together, and its share of the gain.
 * All subsets are run, so the shares are exact; there are at most six changes.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const upgrades = (study: Study, from: Setup, to: Setup, skies: Skies = defaultSkies): UpgradesAnswer =>
  atOnce(upgradesInParts(study, from, to, skies));

/** The same, in parts, ten draws a part. */
export function* upgradesInParts(
  study: Study,
  from: Setup,
  to: Setup,
  skies: Skies = defaultSkies,
): InParts<UpgradesAnswer> {
  checkSkies(skies);
  const changes = changesBetween(from, to);
  const plan = planStay(study.climate, study.trip, horizonUnder(skies, defaultHorizon_days));
  const subsets = 2 ** changes.length;
  const setups = Array.from({ length: subsets }, (_, subset) =>
    planSetup(
      plan,
      changes.reduce((setup, change, i) => (subset & (1 << i) ? change.make(setup) : setup), from),
    ),
  );
  const onRoadOnly = changes.reduce((bits, { id }, i) => (id === "feed" || id === "mains" ? bits | (1 << i) : bits), 0);
  const drop_h = setups.map(() => new Float64Array(drawCount(skies)));
  const lasted = setups.map(() => 0);
  for (let draw = 0; draw < drawCount(skies); draw++) {
    runAll(plan, setups, skies, draw, onRoadOnly, drop_h, lasted);
    if ((draw + 1) % drawsAPart === 0) yield { progress: (draw + 1) / drawCount(skies) };
  }
  const shares = (measure: readonly number[]) => sharesOf(changes.length, measure);
  const horizon_days = plan.hours / 24;
  const days = shares(drop_h.map((hours) => rankedDays(hours, plan.hours, 0.5)));
  const dullDays = shares(drop_h.map((hours) => rankedDays(hours, plan.hours, 0.1)));
  const chance = shares(lasted.map((count) => count / drawCount(skies)));
  return {
    from: from.id,
    to: to.id,
    changes: changes.map(({ id, text }) => ({ id, text })),
    days,
    dullDays,
    chance,
    horizon_days,
    measure: measureOf({ days, dullDays, chance }, horizon_days),
    said: sayUpgrades(changes, { days, dullDays, chance }, horizon_days),
  };
}

const scratch = newFound();

/** @param onRoadOnly bits of the changes that parked days do not feel: their runs are shared */
function runAll(
  plan: StayPlan,
  setups: readonly SetupPlan[],
  skies: Skies,
  draw: number,
  onRoadOnly: number,
  drop_h: readonly Float64Array[],
  lasted: number[],
): void {
  shine(plan, skyOf(plan, skies, draw));
  setups.forEach((setupPlan, i) => {
    harvest(setupPlan);
    const twin = i & ~onRoadOnly;
    drop_h[i]![draw] = twin < i ? drop_h[twin]![draw]! : run(setupPlan.parked, scratch, { stopAtDrop: true }).drop_h;
    if (!(run(setupPlan.travelled, scratch, { stopAtDrop: true }).drop_h >= 0)) lasted[i]!++;
  });
}

const rankedDays = (hours: Float64Array, horizon_h: number, share: number): number =>
  nearestRank(hours.map((h) => (h >= 0 ? h : horizon_h)).sort(), share) / 24;

/** Everything in which a proposal differs, part by part. Panels go with their charger. */
export function changesBetween(from: Setup, to: Setup): Change[] {
  const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
  const panels = ({ arrays, solarCharger }: Setup) => ({ arrays, solarCharger });
  const all: readonly (Change & { readonly changed: boolean })[] = [
    {
      id: "bank",
      text: `bank: ${sayBank(from)} to ${sayBank(to)}`,
      changed: !same(from.bank, to.bank),
      make: (setup) => ({ ...setup, bank: to.bank }),
    },
    {
      id: "panels",
      text: `panels: ${wattsOf(from)} W to ${wattsOf(to)} W`,
      changed: !same(panels(from), panels(to)),
      make: (setup) => ({ ...setup, ...panels(to) }),
    },
    {
      id: "feed",
      text: `road feed: ${sayFeed(from)} to ${sayFeed(to)}`,
      changed: !same(from.feed, to.feed),
      make: (setup) => ({ ...setup, feed: to.feed }),
    },
    {
      id: "inverter",
      text: `inverter: ${rating(from.inverter?.rated_W, "W")} to ${rating(to.inverter?.rated_W, "W")}`,
      changed: !same(from.inverter, to.inverter),
      make: (setup) => ({ ...setup, inverter: to.inverter }),
    },
    {
      id: "mains",
      text: `mains charger: ${rating(from.mainsCharger?.rated_A, "A")} to ${rating(to.mainsCharger?.rated_A, "A")}`,
      changed: !same(from.mainsCharger, to.mainsCharger),
      make: (setup) => ({ ...setup, mainsCharger: to.mainsCharger }),
    },
    {
      id: "loads",
      text: "what runs",
      changed: !same(from.loads, to.loads),
      make: (setup) => ({ ...setup, loads: to.loads }),
    },
  ];
  return all.filter(({ changed }) => changed);
}

const sayBank = ({ bank }: Setup): string =>
  `${bank.capacity_Ah} Ah ${chemistries[bank.chemistry].name}${bank.condition < 1 ? ` at ${Math.round(bank.condition * 100)} %` : ""}`;

const rating = (value: number | undefined, unit: string): string => (value ? `${value} ${unit}` : "none");

const wattsOf = ({ arrays }: Setup): number => arrays.reduce((sum, { watts }) => sum + watts, 0);

function sayFeed({ feed }: Setup): string {
  if (feed === null) return "none";
  return feed.kind === "relay" ? "a relay" : `a ${feed.rated_A * feed.count} A converter`;
}

/** Shares of a measure given for every subset of the changes; bit i of a subset's number is change i. */
export function sharesOf(changes: number, measure: readonly number[]): GainShares {
  const all = measure.length - 1;
  const shares = Array.from({ length: changes }, (_, change) => {
    let share = 0;
    for (let subset = 0; subset <= all; subset++) {
      if (subset & (1 << change)) continue;
      share += orderWeight(bitsIn(subset), changes) * (measure[subset | (1 << change)]! - measure[subset]!);
    }
    return share;
  });
  const alone = Array.from({ length: changes }, (_, change) => measure[1 << change]!);
  return { before: measure[0]!, after: measure[all]!, alone, shares };
}

/** Of all orders of n changes, the share in which a given one comes right after a given set of s others: s!(n−s−1)!/n!. */
function orderWeight(s: number, n: number): number {
  let weight = 1 / n;
  for (let i = 1; i <= s; i++) weight *= i / (n - i);
  return weight;
}

function bitsIn(subset: number): number {
  let bits = 0;
  for (let left = subset; left > 0; left >>= 1) bits += left & 1;
  return bits;
}
