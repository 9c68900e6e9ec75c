import { shownCharge } from "../bank/bankModel.ts";
import {
  arrivalHour,
  harvest,
  newFound,
  newLedger,
  planSetup,
  planStay,
  run,
  shine,
  skyOf,
  type Ledger,
} from "../stay/index.ts";
import type { Study } from "../study.ts";
import { energyByLoad, partsOf, type EnergyByLoad, type HourParts } from "./byLoad.ts";

/** Under which sky, and whether as travelled. */
export interface HoursOptions {
  /** every day at its month's mean, no sun at all, or daily clearness from the day of arrival, 0 to 1 */
  readonly sky?: "average" | "dark" | readonly number[];
  /** true: as described, drives and mains included, over its nights; false: parked for as many */
  readonly travelled?: boolean;
}

/** Every hour of one setup on one sky; value i belongs to the hour that begins i hours after arrival. */
export interface HoursAnswer extends HourParts, EnergyByLoad {
  readonly id: string;
  readonly name: string;
  readonly hours: number;
  /** clock hour at which the first one begins */
  readonly firstHour: number;
  readonly air_C: Float64Array;
  readonly ledger: Ledger;
  /** shown state of charge at the end of the hour, 0 to 1 */
  readonly charge: Float64Array;
}

/**
 * The hourly ledger of one setup.
 *
 * @param id of the setup
 * @throws RangeError where there is no such setup, or a value is out of range
 */
export function ledgerOf(study: Study, id: string, options: HoursOptions = {}): HoursAnswer {
  const { sky = "average", travelled = true } = options;
  const setup = study.setups.find((one) => one.id === id);
  if (setup === undefined) {
    throw new RangeError(`setup must be one of ${study.setups.map((one) => one.id).join(", ")}, got ${id}`);
  }
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  const setupPlan = planSetup(plan, setup);
  if (sky !== "dark") {
    shine(plan, sky === "average" ? plan.meanClearness : skyOf(plan, { rows: [sky] }, 0));
    harvest(setupPlan);
  }
  const drive = travelled ? setupPlan.travelled : setupPlan.parked;
  const ledger = newLedger(drive.hours);
  run(drive, newFound(), { ledger });
  const parts = partsOf(setupPlan, travelled);
  return {
    id,
    name: setup.name,
    hours: drive.hours,
    firstHour: arrivalHour,
    air_C: plan.air_C,
    ...parts,
    ...energyByLoad(setupPlan, parts, ledger),
    ledger,
    charge: ledger.held_Ah.map((held_Ah) => shownCharge(setupPlan.bank, held_Ah)),
  };
}
