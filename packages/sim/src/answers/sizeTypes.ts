import type { ChemistryId } from "../study.ts";
import type { SizePoint } from "./types.ts";

/** A bank that is sold. */
export interface BankChoice {
  readonly chemistry: ChemistryId;
  readonly capacity_Ah: number;
  readonly price: number | null;
  readonly mass_kg: number | null;
}

/** An array that is sold, its panels together. */
export interface ArrayChoice {
  readonly watts: number;
  readonly price: number | null;
  readonly mass_kg: number | null;
}

/** What to size for. */
export interface SizeRequest {
  /** 1 to 60 */
  readonly nights: number;
  /** chance of lasting that is asked, over 0 to 1 */
  readonly chance: number;
  /** 1 to 12; it must hold in the worst of them */
  readonly months: readonly number[];
  readonly chemistries: readonly ChemistryId[];
  readonly banks: readonly BankChoice[];
  readonly arrays: readonly ArrayChoice[];
  /** most watts that the roof takes; null: no limit */
  readonly roof_W: number | null;
  /** most mass that bank and array may add [kg]; null: no limit */
  readonly payload_kg: number | null;
  /** mass of the bank and array that come out [kg] */
  readonly removed_kg: number;
  readonly budget: number | null;
}

/** One chemistry's smallest pairs: every corner of the staircase. */
export interface SizeStaircase {
  readonly chemistry: ChemistryId;
  readonly corners: readonly SizePoint[];
}

/** What a step up or down from the pick would do to the chance. */
export interface SizeStep {
  readonly change: "smaller-bank" | "larger-bank" | "smaller-array" | "larger-array";
  readonly point: SizePoint;
  /** the step in a sentence: "The next smaller bank, 150 Ah: lasts on 74 of 100 trips instead of 93." */
  readonly said: string;
}

/** What keeps every pair on the ladder from doing it. */
export type Obstacle =
  "roof" | "start" | "sun" | "load" | "budget" | "payload" | "prices-not-known" | "masses-not-known";

/** The smallest pairs of bank and array that do it, the one to take, and what stands in the way where none does. */
export interface SizeAnswer {
  readonly nights: number;
  readonly chance: number;
  readonly months: readonly number[];
  readonly staircases: readonly SizeStaircase[];
  /** corners that also fit payload and budget, the pick first (which is no corner where a larger size costs less) */
  readonly fitting: readonly SizePoint[];
  readonly pick: SizePoint | null;
  /** of the months asked, the one in which the pick, or the nearest, does worst; null where there is neither */
  readonly worstMonth: number | null;
  /** least rating of a solar charger that never holds the pick's array back [A]; null where there is no pick, or none is needed */
  readonly charger_A: number | null;
  /** where nothing does it: what stands in the way */
  readonly inTheWay: readonly Obstacle[];
  /** why that one, or what stands in the way, in a sentence */
  readonly reason: string;
  readonly steps: readonly SizeStep[];
  /** where nothing does it: the pair on the ladder that comes nearest, within roof, payload and budget */
  readonly nearest: SizePoint | null;
  readonly bankRuns: number;
  /** what trying every pair under every sky would have taken */
  readonly gridRuns: number;
}
