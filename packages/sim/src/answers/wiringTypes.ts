import type { Overrun } from "../feed/index.ts";
import type { Caution, PeakAnswer } from "./types.ts";

/** How far to trust a statement: "published", "common practice, no source", "from memory", "own computation" … */
export type Standing = string;

/** Volts at one point of a run. */
export interface RunPoint {
  readonly name: string;
  readonly volts_V: number;
  /** through what leads to this point [A] */
  readonly amps_A: number;
  /** lost on the way from the point before [W] */
  readonly heat_W: number;
}

/** What holds the charging amps where they are. */
export type ChargeLimit = "converter" | "fuse" | "plug" | "source" | "cable" | "bank";

/** One state of the charge run: a source voltage and a state of charge. */
export interface ChargeMoment {
  readonly when: "start" | "mid-charge" | "near full";
  /** shown state of charge, 0 to 1 */
  readonly charge: number;
  readonly source_V: number;
  /** share of a drive that the source stands there, 0 to 1 */
  readonly weight: number;
  /** into the bank */
  readonly delivered_A: number;
  /** through the path, loads fed on the way left out */
  readonly input_A: number;
  /** at the bank's terminals */
  readonly bank_V: number;
  readonly points: readonly RunPoint[];
  readonly limitedBy: ChargeLimit;
  readonly limit: { readonly name: string; readonly value: number; readonly unit: "A" | "V" };
  /** amps more into the bank if that limit alone were lifted */
  readonly gain_A: number;
}

/** A conductor for one purpose. */
export interface ConductorSize {
  readonly purpose: "3 % drop" | "5 % drop" | "converter's minimum input" | "amps it carries" | "stage after";
  /** current that it is sized on */
  readonly amps_A: number;
  /** volts that may be lost; null where it is sized on amps alone */
  readonly drop_V: number | null;
  /** exact copper; null where nothing on the shelf will do */
  readonly area_mm2: number | null;
  /** next size on the metric shelf */
  readonly standard_mm2: number | null;
  /** next gauge: "6 AWG" */
  readonly awg: string | null;
  /** why nothing will do; null where something does */
  readonly hopeless: string | null;
  /** the setup that a stage after is for */
  readonly forSetup: { readonly id: string; readonly name: string } | null;
  readonly sentence: string;
}

/** The fuse for one end of a run, or for both where they are alike. */
export interface FuseAdvice {
  readonly end: string;
  /** for the cable that is there, or for the one to pull in its place, which lets more through; null where one will do */
  readonly cable: "as it is" | "once pulled" | null;
  /** null where no size lies above the running current and within what the conductor carries */
  readonly rated_A: number | null;
  /** the largest that still protects the conductor; null where not known or none fits */
  readonly most_A: number | null;
  readonly running_A: number;
  /** what the thinnest conductor of the run carries, as laid; null where it is thinner than the table */
  readonly ampacity_A: number | null;
  /** what a dead short could draw there */
  readonly fault_A: number | null;
  /** kinds that still open at that fault, weakest first */
  readonly kinds: readonly string[];
  readonly sentence: string;
}

/** What a run's thinnest conductor carries, by how it is laid. */
export interface AmpacityRow {
  readonly laid: string;
  readonly amps_A: number | null;
}

/** One run of wire: what is lost along it, what to fuse and what to mind. */
export interface RunAnswer {
  readonly kind: "charge" | "inverter" | "solar" | "fridge-feed";
  readonly name: string;
  /** false where the job does not give the run and a usual length is taken */
  readonly given: boolean;
  /** one way [m] */
  readonly length_m: number;
  /** thinnest conductor of the run; null where there is none */
  readonly thinnest_mm2: number | null;
  readonly running_A: number;
  /** what the running current rests on */
  readonly basis: string;
  /** volts at each point at the running current; empty where the run is not given */
  readonly points: readonly RunPoint[];
  /** lost over the run at the running current; null where the run is not given */
  readonly drop_V: number | null;
  /** of the nominal volts, 0 to 1 */
  readonly dropShare: number | null;
  readonly sizes: readonly ConductorSize[];
  /** the size to pull: the largest that any purpose but the stage after asks, at 3 % */
  readonly use: ConductorSize | null;
  readonly fuses: readonly FuseAdvice[];
  /** fuses and plugs of the run that the running current takes over their rating */
  readonly overruns: readonly Overrun[];
  readonly ampacity: readonly AmpacityRow[];
  readonly ampacityTable: { readonly name: string; readonly source: string; readonly standing: Standing };
  readonly sentences: readonly string[];
}

/** The run that charges the bank on the road. */
export interface ChargeRunAnswer extends RunAnswer {
  readonly kind: "charge";
  readonly feed: "relay" | "converter";
  /** each source voltage at start, mid-charge and near full */
  readonly moments: readonly ChargeMoment[];
  /** amps into the bank at the start of a charge, averaged over the source's voltages */
  readonly startMean_A: number;
  readonly alternator: AlternatorAnswer;
  /** where a conductor may have been sold by its diameter: what it would then deliver */
  readonly ifSoldByDiameter: {
    readonly name: string;
    readonly area_mm2: number;
    readonly delivered_A: number;
    /** as named, copper and all, for comparison */
    readonly asNamed_A: number;
  } | null;
  /** a second opinion for 3 %, by circular mils; null where even 4/0 is too thin */
  readonly byCircularMils: { readonly awg: string | null; readonly source: string; readonly standing: Standing };
}

/** What an alternator can spare, hot, at idle and on the road. */
export interface AlternatorAnswer {
  /** false where the job does not give it and the rating is the least that meets the spare amps on the road */
  readonly given: boolean;
  readonly rated_A: number;
  readonly vehicle_A: number;
  readonly idle: { readonly hot_A: number; readonly spare_A: number };
  readonly road: { readonly hot_A: number; readonly spare_A: number };
  readonly source: string;
  readonly standing: Standing;
  readonly sentence: string;
}

/** A fridge at the end of its feed. */
export interface FridgeRunAnswer extends RunAnswer {
  readonly kind: "fridge-feed";
  readonly load: string;
  readonly cutOut_V: number;
  /** at the fridge, running, from a rested bank at half charge; null where the run is not given */
  readonly atFridge_V: number | null;
  /** shown state of charge below which it stops on its own; 1: never starts; null: never stops, or the run is not given */
  readonly stopsBelow: number | null;
  /** the same with no resistance in the feed */
  readonly stopsBelowWithoutFeed: number | null;
  /** state of charge at which the bank itself would drop this load; 0 where only the BMS does */
  readonly bankDropsBelow: number;
  /** the feed, not the bank, is what stops it */
  readonly feedIsTheCause: boolean;
}

/** One thing to do or to leave room for, and why. */
export interface ChecklistRow {
  readonly id: string;
  readonly item: string;
  readonly reason: string;
  readonly standing: Standing;
}

/** A safety note, said once, with where it applies. */
export interface SafetyRow {
  readonly id: string;
  readonly where: string;
  readonly text: string;
  readonly standing: Standing;
}

/** A standard that bears on the work, and what it covers. */
export interface StandardRow {
  readonly name: string;
  readonly covers: string;
  readonly standing: Standing;
}

/** A large load held against bank and inverter at one state of charge. */
export interface LoadPeak extends PeakAnswer {
  /** at the bank's terminals, the inverter's losses included */
  readonly draw_W: number;
  /** on the inverter; 0 for a dc load */
  readonly ac_W: number;
  /** as it starts, on the inverter; null where nothing is known of it */
  readonly start_W: number | null;
  readonly overSurge: boolean;
  /** shown state of charge below which it trips; 1: even when full; null: never */
  readonly tripsBelow: number | null;
  readonly sentence: string;
}

/** Everything asked of one setup's wiring: plain data and sentences, for the command line and the page alike. */
export interface WiringAnswer {
  readonly id: string;
  readonly name: string;
  readonly charge: ChargeRunAnswer | null;
  readonly others: readonly RunAnswer[];
  readonly fridges: readonly FridgeRunAnswer[];
  readonly cautions: readonly Caution[];
  readonly checklist: readonly ChecklistRow[];
  readonly safety: readonly SafetyRow[];
  readonly standards: readonly StandardRow[];
  /** the short of it, first the charge run */
  readonly sentences: readonly string[];
}
