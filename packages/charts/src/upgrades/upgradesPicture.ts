import type { Days, UpgradesAnswer } from "@stayput/sim";

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

/** The days of an upgrades answer; it caps days at the horizon, so a day at the cap is one that did not end. */
export function upgradesPictureOf({ changes, days, horizon_days }: UpgradesAnswer): UpgradesPicture {
  const ended = (value: number | undefined): Days => (value === undefined || value >= horizon_days ? null : value);
  return {
    from_days: ended(days.before),
    together_days: ended(days.after),
    horizon_days,
    changes: changes.map(({ id, text }, i) => ({
      id,
      name: text,
      share_days: days.shares[i] ?? 0,
      alone_days: ended(days.alone[i]),
    })),
  };
}
