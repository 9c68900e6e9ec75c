import type { Appliance, Inverter } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { inverterRunningLoss_W } from "./inverter.ts";
import { requireAbove, requireShares } from "./require.ts";

/** What an appliance takes, as the hour's mean and as what it is made of. */
export interface ApplianceWatts {
  /** mean over each hour, all of them together [W] */
  readonly mean_W: Float64Array;
  /** while running, all of them together [W] */
  readonly running_W: number;
  /** while standing by, all of them together [W] */
  readonly standby_W: number;
}

/**
 * An appliance's watts at its own terminals: count × (watts × share + standby × (1 − share)). Through an inverter the
 * losses come on top and depend on the running watts, not on the mean (`applianceInverterLoss_W`).
 *
 * @param share of each hour that it runs, 0 to 1, as from `runShare`, after any driving or camped share
 * @throws RangeError naming the field that is out of range
 */
export function applianceWatts(load: Appliance, share: Float64Array): ApplianceWatts {
  mustLie(`${load.id}: watts`, load.watts, 0, 1e5);
  mustLie(`${load.id}: standby_W`, load.standby_W, 0, 1e5);
  requireAbove(`${load.id}: count`, load.count, 0);
  requireShares(`${load.id}: share`, share);
  const running_W = load.count * load.watts;
  const standby_W = load.count * load.standby_W;
  return { mean_W: share.map((s) => running_W * s + standby_W * (1 - s)), running_W, standby_W };
}

/**
 * Inverter losses that an ac appliance causes beyond the idle draw, mean over each hour [W]: the loss at running watts for
 * the share that it runs, at standby watts for the rest.
 *
 * @param share of each hour that it runs, 0 to 1
 */
export function applianceInverterLoss_W(load: Appliance, share: Float64Array, inverter: Inverter): Float64Array {
  const { running_W, standby_W } = applianceWatts(load, share);
  const running = inverterRunningLoss_W(inverter, running_W);
  const standby = inverterRunningLoss_W(inverter, standby_W);
  return share.map((s) => running * s + standby * (1 - s));
}
