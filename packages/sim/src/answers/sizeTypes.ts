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
}

export interface SizeAnswer {
  readonly nights: number;
  readonly chance: number;
  readonly months: readonly number[];
  readonly staircases: readonly SizeStaircase[];
  /** corners that also fit payload and budget, the pick first */
  readonly fitting: readonly SizePoint[];
  readonly pick: SizePoint | null;
  /** why that one, or what stands in the way, in a sentence */
  readonly reason: string;
  readonly steps: readonly SizeStep[];
  /** where nothing does it: the pair on the ladder that comes nearest, within roof, payload and budget */
  readonly nearest: SizePoint | null;
  readonly bankRuns: number;
  /** what trying every pair under every sky would have taken */
  readonly gridRuns: number;
}
