import type { RefillHours } from "./refill.ts";
import type { Autonomy, Caution, LoadUse, SetupAnswer } from "./types.ts";

/**
 * How many days one setup lasts beyond another, sky by sky, so that luck drops out. Runs that outlast the horizon count as
 * the horizon: where any do, the true gain is larger still, and `atLeast` says so.
 */
export interface PairedGain {
  readonly p10_days: number;
  readonly p50_days: number;
  readonly p90_days: number;
  readonly mean_days: number;
  /** smallest over all skies */
  readonly least_days: number;
  readonly atLeast: boolean;
}

/** One setup in the comparison. */
export interface ComparedSetup {
  readonly id: string;
  readonly name: string;
  readonly days: Autonomy;
  readonly reserveDays: Autonomy;
  readonly chanceOfLasting: number;
  /** what takes most of it; null where nothing draws on the bank */
  readonly flattenedBy: LoadUse | null;
  readonly use_Wh_day: number;
  readonly sun_Wh_day: SetupAnswer["sun_Wh_day"];
  readonly refill_h: RefillHours;
  readonly price: number;
  readonly mass_kg: number;
  /** payload left less what this setup adds; null where the job names none */
  readonly payloadLeft_kg: number | null;
  readonly cautions: readonly Caution[];
  /** against the first setup; null for itself */
  readonly gain: PairedGain | null;
  /** the gain in a sentence; null for the first setup */
  readonly said: string | null;
}

/** What `compare` answers: the skies it was asked under, and each setup beside the first. */
export interface CompareAnswer {
  readonly seed: number | null;
  readonly draws: number;
  readonly horizon_days: number;
  readonly nights: number;
  readonly setups: readonly ComparedSetup[];
}
