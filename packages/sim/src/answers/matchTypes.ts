import type { Climate } from "../study.ts";

/** What was seen: the bank found flat on a morning after arrival, 1 the first, and not on the mornings before. */
export interface Observation {
  readonly flatOnMorning: number;
  readonly month: number;
  readonly day: number;
  readonly climate: Climate;
}

/** One thing that might be other than the job says, everything else standing. */
export interface MatchExplanation {
  readonly id: "condition" | "fridge" | "shade";
  readonly name: string;
  /** what the value is: a share of the rated capacity, a multiple of the rated consumption, a share of the sun lost */
  readonly unit: string;
  readonly stated: number;
  /** the value with as much weight below it as above, and the range that holds 95 %; null: no value explains it */
  readonly likely: { readonly low: number; readonly middle: number; readonly high: number } | null;
  /** of those asked, the weight of this one: 0 to 1; all 0 where none explains it */
  readonly plausibility: number;
  /** the values tried, and for each the share of skies under which it happens as seen */
  readonly tried: readonly { readonly value: number; readonly share: number }[];
}

/** Shares of skies under which a bank goes flat before, on and after the morning seen; they sum to 1. */
export interface SeenShares {
  readonly before: number;
  readonly then: number;
  /** or not at all */
  readonly after: number;
}

/** What `match` answers: how likely it was as stated, and what else would explain it. */
export interface MatchAnswer {
  /** share of skies under which all happens as seen with everything as the job says */
  readonly asStated: number;
  /** for each observation, with everything as the job says */
  readonly stated: readonly SeenShares[];
  /** most plausible first */
  readonly explanations: readonly MatchExplanation[];
  readonly said: string;
}
