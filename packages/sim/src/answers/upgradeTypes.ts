/** One difference between the setup as it is and a proposal. */
export interface UpgradeChange {
  readonly id: "bank" | "panels" | "feed" | "inverter" | "mains" | "loads";
  /** in words: "bank: 200 Ah AGM to 200 Ah lithium iron phosphate" */
  readonly text: string;
}

/** A measure of a setup, and how a proposal's changes share its gain. Days are capped at the horizon. */
export interface GainShares {
  readonly before: number;
  readonly after: number;
  /** each change alone: what the measure becomes */
  readonly alone: readonly number[];
  /** each change's part of the whole gain: its mean worth over every order of making the changes (Shapley 1953); they sum to after − before */
  readonly shares: readonly number[];
}

/** What tells two setups apart: median days; where both outlast the horizon, days of the dullest tenth, then the chance. */
export type UpgradeMeasure = "days" | "dullDays" | "chance";

/** What each change between two setups is worth, in days and in chance. */
export interface UpgradesAnswer {
  readonly from: string;
  readonly to: string;
  readonly changes: readonly UpgradeChange[];
  /** median days parked */
  readonly days: GainShares;
  /** days parked that nine skies in ten outlast */
  readonly dullDays: GainShares;
  /** chance of lasting the trip as described */
  readonly chance: GainShares;
  readonly horizon_days: number;
  /** the measure that `said` speaks of: `days` unless both setups outlast the horizon */
  readonly measure: UpgradeMeasure;
  /** the gain in a sentence or two */
  readonly said: string;
}
