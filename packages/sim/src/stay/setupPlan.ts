import { arrayCurrent_A, arrayOutput_W, SOLAR_CHARGERS } from "../array/index.ts";
import { bankModel, restedVolts_V, type BankModel } from "../bank/bankModel.ts";
import { converterMost_A, prepareFeed, type FeedCircuit } from "../feed/index.ts";
import { mustLie } from "../numeric/must.ts";
import type { Bank, Setup } from "../study.ts";
import { demandOf, together, type LoadDemand, type PartLoad } from "./demand.ts";
import type { Drive, MixedHours } from "./drive.ts";
import { arrivalHour, insideBankOffset_C, planeOf, type StayPlan } from "./stayPlan.ts";

/** One setup on a stay, all but the sky worked out. `sun` is refilled for each sky by `harvest`. */
export interface SetupPlan {
  readonly plan: StayPlan;
  readonly setup: Setup;
  readonly bank: BankModel;
  readonly demands: readonly LoadDemand[];
  readonly camped: PartLoad;
  readonly feed: FeedCircuit | null;
  /** by calendar hour: watts behind a tracking charger, amps through a plain one */
  readonly calendarSun: Float64Array;
  /** parked from arrival, drives and mains left out */
  readonly parked: Drive;
  /** the trip as described */
  readonly travelled: Drive;
}

/** @throws RangeError naming the field, what was given and what is accepted */
export function planSetup(plan: StayPlan, setup: Setup, step_h = 1): SetupPlan {
  const { inverter, solarCharger } = setup;
  const bank = bankModel(setup.bank, bankTemp_C(plan, setup.bank), step_h);
  const demands = setup.loads.map((load) => demandOf(plan, load, inverter, setup.bank.nominal_V));
  const camped = together(plan, demands, inverter, "camped");
  const feed = setup.feed === null ? null : prepareFeed(setup.feed);
  for (const array of setup.arrays) planeOf(plan, array.tilt_deg, array.azimuth_deg);
  if (solarCharger !== null) mustLie("solarCharger.rated_A", solarCharger.rated_A, 0, 1000);
  const calendarSun = new Float64Array(plan.days * 24);
  const parked: Drive = {
    bank,
    hours: plan.hours,
    startCharge: plan.trip.startCharge,
    loads: camped,
    sun: calendarSun.subarray(arrivalHour, arrivalHour + plan.hours),
    sunTracks: solarCharger?.kind !== "pwm",
    sunMost_A: solarCharger?.rated_A ?? 0,
    kept: plan.kept,
    mixed: null,
  };
  const mixed = mixedHours(plan, setup, demands, bank, feed);
  const travelled = { ...parked, hours: plan.trip.nights * 24, mixed };
  return { plan, setup, bank, demands, camped, feed, calendarSun, parked, travelled };
}

/** One temperature for a run: the arrival month's mean, and a little more where the bank stands inside [°C]. */
export const bankTemp_C = (plan: StayPlan, { where }: Bank): number =>
  plan.outside_C + (where === "inside" ? insideBankOffset_C : 0);

function mixedHours(
  plan: StayPlan,
  setup: Setup,
  demands: readonly LoadDemand[],
  bank: BankModel,
  feed: FeedCircuit | null,
): MixedHours | null {
  if (plan.trip.drives === null && plan.trip.mains === null) return null;
  return {
    ...plan.parts,
    drivingLoads: together(plan, demands, setup.inverter, "driving"),
    mainsLoads: together(plan, demands, setup.inverter, "mains"),
    feed,
    steadyFeed_A: feed === null ? 0 : steadyFeed_A(bank, feed),
    mainsMost_A: setup.mainsCharger?.rated_A ?? 0,
  };
}

/** What a converter gives where the source carries its rating at the highest volts that the bank comes to; NaN elsewhere. */
export function steadyFeed_A(bank: BankModel, feed: FeedCircuit): number {
  const rated_A = feed.converter?.rated_A ?? NaN;
  const highest_V = Math.max(bank.absorption_V, restedVolts_V(bank, 1) + bank.gap_V);
  return feed.shares.every(({ source_V }) => converterMost_A(feed, source_V, highest_V) >= rated_A) ? rated_A : NaN;
}

/** Fills a setup's sun from the light that `shine` last put on the planes. */
export function harvest({ plan, setup, calendarSun }: SetupPlan): void {
  calendarSun.fill(0);
  const { arrays, solarCharger, bank } = setup;
  if (solarCharger === null) return;
  const plain = solarCharger.kind === "pwm";
  for (const array of arrays) {
    const { light_W_m2 } = planeOf(plan, array.tilt_deg, array.azimuth_deg);
    if (plain) arrayCurrent_A(array, bank.nominal_V, light_W_m2, plan.calendarAir_C, calendarSun);
    else arrayOutput_W(array, light_W_m2, plan.calendarAir_C, calendarSun);
  }
  if (plain) return;
  const { efficiency } = SOLAR_CHARGERS.mppt;
  for (let i = 0; i < calendarSun.length; i++) calendarSun[i] = calendarSun[i]! * efficiency;
}

/** The parked drive with some loads left out. */
export const parkedWith = (setupPlan: SetupPlan, demands: readonly LoadDemand[]): Drive => ({
  ...setupPlan.parked,
  loads: together(setupPlan.plan, demands, setupPlan.setup.inverter, "camped"),
});
