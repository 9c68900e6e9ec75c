import type { Days } from "@stayput/sim";

/** One change and what it is worth. */
export interface UpgradeChange {
  readonly id: string;
  readonly name: string;
  /** its fair share of the whole gain (Shapley): the shares add up to the gain; may be negative [days] */
  readonly share_days: number;
  /** days with this change and no other */
  readonly alone_days: Days;
}

/** What each change gives towards the whole. Null days are counted as the horizon in the shares. */
export interface UpgradesPicture {
  readonly from_days: Days;
  readonly together_days: Days;
  readonly horizon_days: number;
  readonly changes: readonly UpgradeChange[];
}
