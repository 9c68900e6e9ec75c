import type { DayPicture } from "@stayput/charts";
import type { Fault, Job } from "@stayput/job";
import type { ExplainAnswer, Study } from "@stayput/sim";
import type { TypedLoad } from "./typedLoad.ts";

/** What a job came to once it was read: every default filled in, the place looked up. */
export interface Read {
  readonly job: Job;
  readonly study: Study;
  readonly place: { readonly name: string; readonly latitude_deg: number; readonly longitude_deg: number | null };
  /** what was assumed, and how good the place's figures are */
  readonly notes: readonly string[];
  /** clock hours of sunset and sunrise on the day of arrival; null under the midnight sun */
  readonly dark: { readonly from_h: number; readonly to_h: number } | null;
  /** names of the loads that each setup cannot run, for want of an inverter */
  readonly stranded: Readonly<Record<string, readonly string[]>>;
  /** charge that each setup would rather not go below, 0 to 1 */
  readonly reserves: Readonly<Record<string, number>>;
}

/**
 * What the worker says while it answers: the faults; or at first the average sky, then the drawn skies over the days that
 * are drawn, then over the whole horizon, then the days without each load.
 */
export type Update =
  | { readonly kind: "faults"; readonly faults: readonly Fault[] }
  | { readonly kind: "failed"; readonly message: string }
  | {
      readonly kind: "average";
      readonly read: Read;
      readonly answer: ExplainAnswer;
      readonly days: readonly DayPicture[];
      /** time spent in the worker [ms] */
      readonly took_ms: number;
    }
  | { readonly kind: "drawn" | "whole" | "complete"; readonly answer: ExplainAnswer; readonly took_ms: number };

export interface PlaceHit {
  readonly id: string;
  readonly name: string;
  readonly country: string;
}

export interface LoadsFound {
  readonly rows: readonly LoadHit[];
  /** what was typed with a quantity, as a load of its own */
  readonly typed: TypedLoad | null;
}

export interface LoadHit {
  readonly id: string;
  readonly name: string;
  /** "14 W" or "720 Wh a day" */
  readonly draw: string;
  readonly source: string;
  readonly standing: string;
}
