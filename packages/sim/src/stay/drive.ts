import type { BankModel } from "../bank/bankModel.ts";
import type { FeedCircuit } from "../feed/index.ts";

/**
 * What loads ask of the bus, an hour a value. Both are views of one array, the second after the first: the hourly loop reads
 * them at every step, and has one array less to look up.
 */
export interface HourlyLoads {
  /** powers of each hour, then elements of each [W] */
  readonly both: Float64Array;
  /** powers [W] */
  readonly load_W: Float64Array;
  /** plain heating elements, at nominal volts [W] */
  readonly element_W: Float64Array;
}

/** Loads that ask for nothing yet. @param hours whole, 1 or more */
export function hourlyLoads(hours: number): HourlyLoads {
  const both = new Float64Array(2 * hours);
  return { both, load_W: both.subarray(0, hours), element_W: both.subarray(hours) };
}

/** What drives a bank, an hour a value: everything that the bank itself does not change. */
export interface Drive {
  readonly bank: BankModel;
  /** length of the run [h] */
  readonly hours: number;
  /** share of both tanks at the start, 0 to 1 */
  readonly startCharge: number;
  /** while camped */
  readonly loads: HourlyLoads;
  /** behind a tracking charger watts, behind a plain one amps: in the open, and before its rating */
  readonly sun: Float64Array;
  readonly sunTracks: boolean;
  /** rating of the solar charger */
  readonly sunMost_A: number;
  /** share of the sun's output that shade leaves */
  readonly kept: Float64Array;
  /** driving and mains; null where parked throughout */
  readonly mixed: MixedHours | null;
}

/**
 * Hours of a trip that are not all camped: what part of each is parked, driven or on the mains, and the loads of each
 * part. Shares of an hour run side by side from the state at its start.
 */
export interface MixedHours {
  readonly parked: Float64Array;
  readonly driving: Float64Array;
  readonly mains: Float64Array;
  readonly drivingLoads: HourlyLoads;
  /** left for the bank, ac loads gone to the mains */
  readonly mainsLoads: HourlyLoads;
  readonly feed: FeedCircuit | null;
  /** what the feed gives at any volts that the bank comes to; 0 where there is none, NaN where it depends on the bank */
  readonly steadyFeed_A: number;
  /** 0 where there is no mains charger */
  readonly mainsMost_A: number;
}
