import { together, type Ledger, type LoadDemand, type SetupPlan } from "../stay/index.ts";

/** The energy of each hour of a run, parted among what asked for it. */
export interface EnergyByLoad {
  /** what each load drew at the bus, the inverter's running losses included [Wh] */
  readonly byLoad: readonly { readonly id: string; readonly name: string; readonly Wh: Float64Array }[];
  /** the inverter's idle draw [Wh] */
  readonly inverterIdle_Wh: Float64Array;
}

/** What part of each hour is what, 0 to 1; with the camped rest they make 1. */
export interface HourParts {
  readonly driving: Float64Array;
  readonly mains: Float64Array;
}

/** A run's hours as travelled, or all camped. */
export function partsOf({ plan }: SetupPlan, travelled: boolean): HourParts {
  const none = () => new Float64Array(plan.hours);
  return travelled ? { driving: plan.parts.driving, mains: plan.parts.mains } : { driving: none(), mains: none() };
}

/** The hours' energy by load: what each asks in each part of an hour, for as long as there was power. */
export function energyByLoad(setupPlan: SetupPlan, { driving, mains }: HourParts, ledger: Ledger): EnergyByLoad {
  const { plan, setup, demands, camped } = setupPlan;
  const hourly = (value: (i: number) => number) => series(ledger.hours, value);
  const drivingIdle_W = together(plan, demands, setup.inverter, "driving").idle_W;
  const mixed = (i: number, camped_W: number, driving_W: number, mains_W: number): number =>
    ledger.powered_h[i]! * ((1 - driving[i]! - mains[i]!) * camped_W + driving[i]! * driving_W + mains[i]! * mains_W);
  const element_W = demands.map((demand) => hourly((i) => elementOf_W(demand, driving, i)));
  const allElements_W = hourly((i) => element_W.reduce((sum, one) => sum + one[i]!, 0));
  const byLoad = demands.map(({ load, camped_W, driving_W, needsInverter }, d) => ({
    id: load.id,
    name: load.name,
    Wh: hourly((i) => {
      const steady = mixed(i, camped_W[i]!, driving_W[i]!, needsInverter === null ? camped_W[i]! : 0);
      const all = allElements_W[i]!;
      return steady + (all > 0 ? (ledger.element_Wh[i]! * element_W[d]![i]!) / all : 0);
    }),
  }));
  const idle = (i: number): number => mixed(i, camped.idle_W?.[i] ?? 0, drivingIdle_W?.[i] ?? 0, 0);
  return { byLoad, inverterIdle_Wh: hourly(idle) };
}

function series(hours: number, value: (i: number) => number): Float64Array {
  const made = new Float64Array(hours);
  for (let i = 0; i < hours; i++) made[i] = value(i);
  return made;
}

/** Watts of a load's heating element at nominal volts, over the parts of an hour. */
const elementOf_W = ({ campedElement_W, drivingElement_W }: LoadDemand, driving: Float64Array, i: number): number =>
  (1 - driving[i]!) * (campedElement_W?.[i] ?? 0) + driving[i]! * (drivingElement_W?.[i] ?? 0);
