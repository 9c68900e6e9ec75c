import { arrayCurrent_A, arrayOutput_W, SOLAR_CHARGERS } from "../array/index.ts";
import { bankModel } from "../bank/bankModel.ts";
import { bankTemp_C, drawCount, newFound, planeOf, planSetup, planStay, run, shine, skyOf } from "../stay/index.ts";
import type { Drive, SetupPlan, Skies } from "../stay/index.ts";
import { arrivalHour } from "../stay/stayPlan.ts";
import type { Bank, Setup, SolarArray, Study } from "../study.ts";
import { tripIn } from "./tripIn.ts";

/** What an array stands as where a setup has none to take after: flat on a touring roof (chosen). */
const plainRoof: SolarArray = {
  name: "Roof",
  watts: 1,
  tilt_deg: 0,
  azimuth_deg: 0,
  mount: "flush",
  soiling: 0.1,
  gamma_per_K: -0.0035,
};

/**
 * A trip in one month, ready for any bank and any watts of array: the skies drawn and one watt's sun worked out for each,
 * so that a candidate costs one recurrence a sky. Skies run from the dullest up, so that a candidate that fails, fails soon.
 */
export interface Trial {
  /** of arrival, 1 to 12 */
  readonly month: number;
  readonly setupPlan: SetupPlan;
  /** for each sky, sun of one watt by hour of the trip: watts behind a tracking charger, amps through a plain one */
  readonly sunPerWatt: readonly Float64Array[];
  /** loads, drives and mains of the trip, with room for a candidate's sun */
  readonly scratchSun: Float64Array;
  /** bank runs made so far */
  readonly count: { runs: number };
}

/** The trip of `study` with `nights` and `month` in place of its own, and the loads and feed of `setup`. */
export function makeTrial(study: Study, setup: Setup, month: number, nights: number, skies: Skies): Trial {
  const plan = planStay(study.climate, { ...tripIn(study.trip, month), nights }, nights);
  const arrays = perWatt(setup.arrays);
  const setupPlan = planSetup(plan, { ...setup, arrays });
  const order = Array.from({ length: drawCount(skies) }, (_, draw) => skyOf(plan, skies, draw)).sort(
    (a, b) => total(a) - total(b),
  );
  const sunPerWatt = order.map((clearness) => {
    shine(plan, clearness);
    return sunOfOneWatt(setupPlan, arrays);
  });
  return { month, setupPlan, sunPerWatt, scratchSun: new Float64Array(plan.hours), count: { runs: 0 } };
}

/** The sun that so many watts bring and what loads take, camped, by day of 24 h and sky. */
export function dailySums({ setupPlan, sunPerWatt }: Trial, array_W: number): { sun_Wh: number; load_Wh: number }[] {
  const { plan, parked, setup } = setupPlan;
  const volts = setup.solarCharger?.kind === "pwm" ? setup.bank.nominal_V : 1;
  return sunPerWatt.flatMap((one) =>
    Array.from({ length: plan.hours / 24 }, (_, day) => {
      let sun_Wh = 0;
      let load_Wh = 0;
      for (let i = 24 * day; i < 24 * (day + 1); i++) {
        sun_Wh += one[i]! * plan.kept[i]! * volts * array_W;
        load_Wh += parked.loads.load_W[i]! + parked.loads.element_W[i]!;
      }
      return { sun_Wh, load_Wh };
    }),
  );
}

/** What loads take and what one watt of array brings, a day, camped, in the mean over all skies. */
export function meanBalance(trial: Trial): { load_Wh_day: number; sunPerWatt_Wh_day: number } {
  const days = dailySums(trial, 1);
  const mean = (value: (day: (typeof days)[number]) => number) =>
    days.reduce((sum, day) => sum + value(day), 0) / days.length;
  return { load_Wh_day: mean(({ load_Wh }) => load_Wh), sunPerWatt_Wh_day: mean(({ sun_Wh }) => sun_Wh) };
}

const total = (series: Float64Array): number => series.reduce((sum, value) => sum + value, 0);

function perWatt(arrays: readonly SolarArray[]): readonly SolarArray[] {
  const watts = arrays.reduce((sum, array) => sum + array.watts, 0);
  if (!(watts > 0)) return [plainRoof];
  return arrays.map((array) => ({ ...array, watts: array.watts / watts }));
}

function sunOfOneWatt({ plan, setup }: SetupPlan, arrays: readonly SolarArray[]): Float64Array {
  const sun = new Float64Array(plan.days * 24);
  const plain = setup.solarCharger?.kind === "pwm";
  for (const array of arrays) {
    const { light_W_m2 } = planeOf(plan, array.tilt_deg, array.azimuth_deg);
    if (plain) arrayCurrent_A(array, setup.bank.nominal_V, light_W_m2, plan.calendarAir_C, sun);
    else arrayOutput_W(array, light_W_m2, plan.calendarAir_C, sun);
  }
  const kept = plain ? 1 : SOLAR_CHARGERS.mppt.efficiency;
  return sun.map((value) => value * kept).slice(arrivalHour, arrivalHour + plan.hours);
}

/** A ladder of banks with one of arrays, smallest first, to be held against a trial pair by pair. */
export interface Pairs {
  readonly banks: readonly Bank[];
  readonly arrays_W: readonly number[];
}

/**
 * What is known of a trial's pairs, sky by sky. Survival grows with bank and with array, so a sky that a pair lasted under
 * every larger pair lasts under too, and one that it failed under every smaller pair fails under: neither is run again. (One
 * exception, in a trip that arrives all but empty: a larger empty bank takes longer to come up to the volts that loads need.)
 */
export interface KnownPairs {
  readonly trial: Trial;
  readonly pairs: Pairs;
  /** for each sky and bank, the smallest array known to last, one past the end where none is */
  readonly lastsFrom: Int16Array;
  /** for each sky and bank, the largest array known to fail, −1 where none is */
  readonly failsTo: Int16Array;
  readonly drives: (Drive | undefined)[];
}

export function knownPairs(trial: Trial, pairs: Pairs): KnownPairs {
  const cells = trial.sunPerWatt.length * pairs.banks.length;
  return {
    trial,
    pairs,
    lastsFrom: new Int16Array(cells).fill(pairs.arrays_W.length),
    failsTo: new Int16Array(cells).fill(-1),
    drives: [],
  };
}

/** A charger to match so many watts: amps at nominal volts, so that it never holds them back [A]. */
export const chargerFor_A = (array_W: number, nominal_V: number): number => array_W / nominal_V;

function driveOf({ trial, pairs, drives }: KnownPairs, b: number): Drive {
  const { plan, travelled } = trial.setupPlan;
  const bank = pairs.banks[b]!;
  return (drives[b] ??= {
    ...travelled,
    bank: bankModel(bank, bankTemp_C(plan, bank)),
    sun: trial.scratchSun,
    sunMost_A: Infinity,
  });
}

const scratch = newFound();

/** Whether bank `b` with array `a` lasts the trip under one sky. */
function lasts(known: KnownPairs, b: number, a: number, draw: number): boolean {
  const { trial, pairs, lastsFrom, failsTo } = known;
  const row = draw * pairs.banks.length;
  for (let smaller = 0; smaller <= b; smaller++) if (lastsFrom[row + smaller]! <= a) return true;
  for (let larger = b; larger < pairs.banks.length; larger++) if (failsTo[row + larger]! >= a) return false;
  const lasted = runPair(trial, driveOf(known, b), pairs.arrays_W[a]!, draw);
  if (lasted) lastsFrom[row + b] = a;
  else failsTo[row + b] = a;
  return lasted;
}

function runPair(trial: Trial, drive: Drive, array_W: number, draw: number): boolean {
  const one = trial.sunPerWatt[draw]!;
  for (let i = 0; i < trial.scratchSun.length; i++) trial.scratchSun[i] = one[i]! * array_W;
  trial.count.runs++;
  return !(run(drive, scratch, { stopAtDrop: true }).drop_h >= 0);
}

/** Share of skies under which a pair lasts the trip. */
export function chanceIn(known: KnownPairs, b: number, a: number): number {
  const draws = known.trial.sunPerWatt.length;
  let lasted = 0;
  for (let draw = 0; draw < draws; draw++) if (lasts(known, b, a, draw)) lasted++;
  return lasted / draws;
}

/** Whether that share is at least `chance`: stops as soon as too many skies have failed, or enough have not. */
export function reaches(known: KnownPairs, b: number, a: number, chance: number): boolean {
  const draws = known.trial.sunPerWatt.length;
  const needed = Math.ceil(chance * draws - 1e-9);
  let lasted = 0;
  for (let draw = 0; draw < draws && lasted < needed; draw++) {
    if (lasts(known, b, a, draw)) lasted++;
    else if (draw + 1 - lasted > draws - needed) return false;
  }
  return lasted >= needed;
}
