import {
  newFound,
  newLedger,
  parkedWith,
  run,
  harvest,
  type Drive,
  type Found,
  type Ledger,
  type SetupPlan,
} from "../stay/index.ts";
import { bandOf } from "./band.ts";
import { cautionsOf } from "./cautions.ts";
import { foodAfter } from "./food.ts";
import { fridgesOf } from "./fridges.ts";
import { peaksOf } from "./peaks.ts";
import { daysOf, spreadOf } from "./quantile.ts";
import { lossesOf, sunOf, useOf } from "./whereItGoes.ts";
import type { Autonomy, PeakAnswer, SetupAnswer } from "./types.ts";

/** The fixed skies: no sun at all, and every day at its month's clearness. */
interface FixedSky {
  readonly found: Found;
  readonly held_Ah: Float64Array;
}

/** What is gathered for one setup while the skies go by. Hours; NaN where it did not happen. */
export interface Tally {
  readonly setupPlan: SetupPlan;
  readonly drop_h: Float64Array;
  readonly reserve_h: Float64Array;
  readonly lasted: Uint8Array;
  readonly held_Ah: readonly Float64Array[];
  readonly without: readonly { readonly drive: Drive; readonly drop_h: Float64Array; readonly average: Found }[];
  readonly dark: FixedSky;
  readonly average: FixedSky & { readonly ledger: Ledger };
  drawn: number;
}

const scratch = newFound();

/** What a tally is to keep besides days and chance: days without each load, and charge by hour. */
export interface TallyOptions {
  readonly without: boolean;
  readonly band: boolean;
}

export function newTally(setupPlan: SetupPlan, draws: number, { without, band }: TallyOptions): Tally {
  const { hours } = setupPlan.parked;
  const noDrops = () => new Float64Array(draws).fill(NaN);
  const demands = without ? setupPlan.demands : [];
  return {
    setupPlan,
    drop_h: noDrops(),
    reserve_h: noDrops(),
    lasted: new Uint8Array(draws),
    held_Ah: Array.from({ length: band ? draws : 0 }, () => new Float64Array(hours + 1)),
    without: demands.map((left) => ({
      drive: parkedWith(
        setupPlan,
        demands.filter((demand) => demand !== left),
      ),
      drop_h: noDrops(),
      average: newFound(),
    })),
    dark: { found: newFound(), held_Ah: new Float64Array(hours + 1) },
    average: { found: newFound(), held_Ah: new Float64Array(hours + 1), ledger: newLedger(hours) },
    drawn: 0,
  };
}

/** Dark and average skies; the planes must hold the light of the average sky. */
export function tallyFixed({ setupPlan, dark, average, without }: Tally): void {
  setupPlan.calendarSun.fill(0);
  run(setupPlan.parked, dark.found, { held_Ah: dark.held_Ah });
  harvest(setupPlan);
  run(setupPlan.parked, average.found, { held_Ah: average.held_Ah, ledger: average.ledger });
  for (const { drive, average: found } of without) run(drive, found, { stopAtDrop: true });
}

/** One drawn sky; the setup's sun must hold its harvest. */
export function tallyDraw(tally: Tally, draw: number): void {
  const { setupPlan, without } = tally;
  const held_Ah = tally.held_Ah[draw] ?? null;
  run(setupPlan.parked, scratch, { held_Ah, stopAtDrop: held_Ah === null });
  tally.drop_h[draw] = scratch.drop_h;
  tally.reserve_h[draw] = scratch.reserve_h;
  tally.lasted[draw] = run(setupPlan.travelled, scratch, { stopAtDrop: true }).drop_h >= 0 ? 0 : 1;
  for (const { drive, drop_h } of without) drop_h[draw] = run(drive, scratch, { stopAtDrop: true }).drop_h;
  tally.drawn = draw + 1;
}

export function setupAnswer(tally: Tally): SetupAnswer {
  const { setupPlan, dark, average } = tally;
  const { setup } = setupPlan;
  return {
    id: setup.id,
    name: setup.name,
    use_Wh_day: useOf(setupPlan, average.ledger),
    sun_Wh_day: sunOf(setupPlan, average.ledger),
    losses_Wh_day: lossesOf(setupPlan, average.ledger),
    days: autonomyOf(tally, (found) => found.drop_h, tally.drop_h),
    reserveDays: autonomyOf(tally, (found) => found.reserve_h, tally.reserve_h),
    chanceOfLasting: chanceOf(tally),
    without: withoutEach(tally),
    food: foodAfter(setupPlan, average.found, dark.found),
    fridges: fridgesOf(setupPlan),
    peaks: peaksOf(setupPlan, average.found).map(shortOfPeak),
    cautions: cautionsOf(setupPlan),
    charge: bandOf(setupPlan.bank, average.held_Ah, dark.held_Ah, tally.held_Ah.slice(0, tally.drawn)),
  };
}

/** What `wiring` says more of a peak is left to it. */
const shortOfPeak = ({ load, name, draw_A, volts_V, verdict }: PeakAnswer): PeakAnswer => ({
  load,
  name,
  draw_A,
  volts_V,
  verdict,
});

/** So far as the skies have gone by: before the first drawn one, the average stands in for the spread. */
function autonomyOf({ dark, average, drawn }: Tally, hours: (found: Found) => number, series: Float64Array): Autonomy {
  const drawnSoFar = drawn === 0 ? [hours(average.found)] : series.subarray(0, drawn);
  return { dark: daysOf(hours(dark.found)), average: daysOf(hours(average.found)), drawn: spreadOf(drawnSoFar) };
}

function chanceOf({ lasted, drawn, setupPlan }: Tally): number {
  if (drawn === 0) return run(setupPlan.travelled, scratch, { stopAtDrop: true }).drop_h >= 0 ? 0 : 1;
  return lasted.subarray(0, drawn).reduce((sum, one) => sum + one, 0) / drawn;
}

function withoutEach({ without, setupPlan, drawn }: Tally): SetupAnswer["without"] {
  return without.map(({ drop_h, average }, i) => {
    const { id, name } = setupPlan.demands[i]!.load;
    const hours = drawn === 0 ? [average.drop_h] : drop_h.subarray(0, drawn);
    return { load: id, name, days: daysOf(average.drop_h), daysP50: spreadOf(hours).p50 };
  });
}
