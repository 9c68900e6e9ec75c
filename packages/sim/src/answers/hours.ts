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
  together,
  type Ledger,
  type LoadDemand,
  type SetupPlan,
} from "../stay/index.ts";
import type { Study } from "../study.ts";

/** Under which sky, and whether as travelled. */
export interface HoursOptions {
  /** every day at its month's mean, no sun at all, or daily clearness from the day of arrival, 0 to 1 */
  readonly sky?: "average" | "dark" | readonly number[];
  /** true: as described, drives and mains included, over its nights; false: parked for as many */
  readonly travelled?: boolean;
}

/** Every hour of one setup on one sky; value i belongs to the hour that begins i hours after arrival. */
export interface HoursAnswer {
  readonly id: string;
  readonly name: string;
  readonly hours: number;
  /** clock hour at which the first one begins */
  readonly firstHour: number;
  readonly air_C: Float64Array;
  /** shares of the hour, which with the camped rest make 1 */
  readonly driving: Float64Array;
  readonly mains: Float64Array;
  /** what each load drew at the bus, the inverter's running losses included [Wh] */
  readonly byLoad: readonly { readonly id: string; readonly name: string; readonly Wh: Float64Array }[];
  /** the inverter's idle draw [Wh] */
  readonly inverterIdle_Wh: Float64Array;
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
  const shown = new Float32Array(drive.hours + 1);
  run(drive, newFound(), { ledger, shown });
  return {
    id,
    name: setup.name,
    hours: drive.hours,
    firstHour: arrivalHour,
    air_C: plan.air_C,
    ...parts(setupPlan, travelled),
    ...shares(setupPlan, travelled, ledger),
    ledger,
    charge: Float64Array.from(shown.subarray(1)),
  };
}

function parts({ plan }: SetupPlan, travelled: boolean): Pick<HoursAnswer, "driving" | "mains"> {
  const none = () => new Float64Array(plan.hours);
  return travelled ? { driving: plan.parts.driving, mains: plan.parts.mains } : { driving: none(), mains: none() };
}

/** The hour's energy by load: what each asks in each part of the hour, for as long as there was power. */
function shares(
  setupPlan: SetupPlan,
  travelled: boolean,
  ledger: Ledger,
): Pick<HoursAnswer, "byLoad" | "inverterIdle_Wh"> {
  const { plan, setup, demands, camped } = setupPlan;
  const { driving, mains } = parts(setupPlan, travelled);
  const parked = driving.map((share, i) => 1 - share - mains[i]!);
  const drivingIdle_W = together(plan, demands, setup.inverter, "driving").idle_W;
  const mixed = (i: number, camped_W: number, driving_W: number, mains_W: number): number =>
    ledger.powered_h[i]! * (parked[i]! * camped_W + driving[i]! * driving_W + mains[i]! * mains_W);
  const element_W = demands.map((demand) => elements(demand, parked, driving, mains));
  const allElements_W = Float64Array.from(driving, (_, i) => element_W.reduce((sum, one) => sum + one[i]!, 0));
  const byLoad = demands.map(({ load, camped_W, driving_W, needsInverter }, d) => ({
    id: load.id,
    name: load.name,
    Wh: Float64Array.from(driving, (_, i) => {
      const steady = mixed(i, camped_W[i]!, driving_W[i]!, needsInverter === null ? camped_W[i]! : 0);
      const all = allElements_W[i]!;
      return steady + (all > 0 ? (ledger.element_Wh[i]! * element_W[d]![i]!) / all : 0);
    }),
  }));
  const idle = (i: number): number => mixed(i, camped.idle_W?.[i] ?? 0, drivingIdle_W?.[i] ?? 0, 0);
  return { byLoad, inverterIdle_Wh: Float64Array.from(driving, (_, i) => idle(i)) };
}

/** Watts of a load's heating element at nominal volts, over the parts of each hour. */
function elements(
  { campedElement_W, drivingElement_W }: LoadDemand,
  parked: Float64Array,
  driving: Float64Array,
  mains: Float64Array,
): Float64Array {
  return parked.map(
    (share, i) => (share + mains[i]!) * (campedElement_W?.[i] ?? 0) + driving[i]! * (drivingElement_W?.[i] ?? 0),
  );
}
