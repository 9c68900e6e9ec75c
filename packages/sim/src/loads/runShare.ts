import type { Appliance, Use } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { requireTemperatures } from "./require.ts";

/** Clock hour at which hour 0 of a stay begins. */
const ARRIVAL_h = 15;

/** A change of the running level at a moment, in hours from midnight before arrival. */
interface Step {
  readonly at_h: number;
  readonly change: number;
}

/**
 * The share of each hour that an appliance runs, by its hours of use and its outside-temperature gate. Hour i of a
 * stay begins 15 + i hours after the midnight before arrival. A window whose ends are equal is empty. A use belongs to
 * the day on which it starts, past midnight too; `everyDays: n` runs on days that are multiples of n, counted from the
 * day of arrival. Where uses overlap their duties add, never above 1: an appliance cannot run twice at once. The gate
 * takes the hour's one temperature and is strict: `above_C: 26` runs at 26.1, not at 26; with both limits, both must
 * hold. `only` is not looked at here.
 *
 * @param load the appliance; clock hours 0 to 24, duty 0 to 1, minutes 0 to 1440, everyDays a whole number from 1.
 * @param air_C outside air, one value an hour from arrival [°C]
 * @returns length of `air_C`, each 0 to 1
 * @throws RangeError naming the field that is out of range
 */
export function runShare(load: Appliance, air_C: Float64Array): Float64Array {
  load.use.forEach((use, index) => requireUse(`${load.id}: use[${index}]`, use));
  requireTemperatures(`${load.id}: air_C`, air_C);
  const share = filledByUse(load.use, air_C.length);
  for (let i = 0; i < share.length; i++) if (!gateOpen(load, air_C[i]!)) share[i] = 0;
  return share;
}

function requireUse(field: string, use: Use): void {
  if (!(Number.isInteger(use.everyDays) && use.everyDays >= 1))
    throw new RangeError(`${field}.everyDays must be a whole number from 1, got ${use.everyDays}`);
  if ("at" in use) {
    mustLie(`${field}.at`, use.at, 0, 24);
    mustLie(`${field}.minutes`, use.minutes, 0, 1440);
  } else {
    mustLie(`${field}.from`, use.from, 0, 24);
    mustLie(`${field}.to`, use.to, 0, 24);
    mustLie(`${field}.duty`, use.duty, 0, 1);
  }
}

function filledByUse(uses: readonly Use[], hours: number): Float64Array {
  const end_h = ARRIVAL_h + hours;
  const steps = uses.flatMap((use) => stepsOf(use, end_h)).sort((a, b) => a.at_h - b.at_h);
  const share = new Float64Array(hours);
  let level = 0;
  steps.forEach(({ at_h, change }, index) => {
    level += change;
    const until_h = steps[index + 1]?.at_h ?? at_h;
    if (level > 1e-12) spread(share, at_h, until_h, Math.min(level, 1));
  });
  for (let i = 0; i < hours; i++) share[i] = Math.min(1, share[i]!); // rounding only
  return share;
}

/** A use's starts and stops on each of its days. A daily use that began the day before arrival may still be running. */
function stepsOf(use: Use, end_h: number): Step[] {
  const from_h = "at" in use ? use.at : use.from;
  const length_h = "at" in use ? use.minutes / 60 : use.to - use.from + (use.from > use.to ? 24 : 0);
  const duty = "at" in use ? 1 : use.duty;
  const steps: Step[] = [];
  for (let day = use.everyDays === 1 ? -1 : 0; 24 * day + from_h < end_h; day += use.everyDays) {
    const start_h = 24 * day + from_h;
    steps.push({ at_h: start_h, change: duty }, { at_h: start_h + length_h, change: -duty });
  }
  return steps;
}

/** Adds a level held from one moment to another to the hours it touches. */
function spread(share: Float64Array, from_h: number, until_h: number, level: number): void {
  const from = Math.max(0, from_h - ARRIVAL_h);
  const until = Math.min(share.length, until_h - ARRIVAL_h);
  for (let i = Math.floor(from); i < until; i++)
    share[i] = share[i]! + level * (Math.min(i + 1, until) - Math.max(i, from));
}

function gateOpen({ outside }: Appliance, air_C: number): boolean {
  if (outside === null) return true;
  const warmEnough = outside.above_C === undefined || air_C > outside.above_C;
  const coldEnough = outside.below_C === undefined || air_C < outside.below_C;
  return warmEnough && coldEnough;
}
