import {
  absorptionFridge,
  applianceInverterLoss_W,
  applianceWatts,
  compressorFridge,
  inverterRunningLoss_W,
  runShare,
} from "../loads/index.ts";
import type { AbsorptionFridge, Appliance, CompressorFridge, Inverter, Load } from "../study.ts";
import { hourlyLoads, type HourlyLoads } from "./drive.ts";
import type { StayPlan } from "./stayPlan.ts";

/** What one load asks of the bus, by hour of the stay, as if the whole hour were camped, or driven. */
export interface LoadDemand {
  readonly load: Load;
  /** at the bus, running losses of the inverter included, its idle draw not [W] */
  readonly camped_W: Float64Array;
  readonly driving_W: Float64Array;
  /** running losses of the inverter in `camped_W` [W] */
  readonly campedLoss_W: Float64Array | null;
  /** plain heating element at nominal volts [W] */
  readonly campedElement_W: Float64Array | null;
  readonly drivingElement_W: Float64Array | null;
  /** hours in which it keeps the inverter on */
  readonly needsInverter: Uint8Array | null;
  readonly inside_C: Float64Array | null;
  readonly stretched: Uint8Array | null;
  readonly gas_g: Float64Array | null;
}

/** A series of nothing, shared by all that draw nothing. */
const nothing = new WeakMap<StayPlan, Float64Array>();

function none(plan: StayPlan): Float64Array {
  const zeros = nothing.get(plan) ?? new Float64Array(plan.hours);
  nothing.set(plan, zeros);
  return zeros;
}

/** A load's demand, and what of the setup it was worked out with. */
interface Known {
  readonly demand: LoadDemand;
  readonly inverter: Inverter | null;
  readonly nominal_V: number;
}

/** By load, so that setups with the same one share its hours. */
const known = new WeakMap<StayPlan, Map<Load, Known>>();

/**
 * What one load asks by hour, whatever the bank; worked out once for all setups of a plan that run it alike.
 * @param nominal_V of the bank, for controls rated in amps
 */
export function demandOf(plan: StayPlan, load: Load, inverter: Inverter | null, nominal_V: number): LoadDemand {
  const ofPlan = known.get(plan) ?? new Map<Load, Known>();
  known.set(plan, ofPlan);
  const found = ofPlan.get(load);
  const alike = found?.nominal_V === nominal_V && (found.inverter === inverter || !takesAc(load));
  if (alike) return found.demand;
  const demand = workedOut(plan, load, inverter, nominal_V);
  ofPlan.set(load, { demand, inverter, nominal_V });
  return demand;
}

const takesAc = (load: Load): boolean =>
  load.kind === "absorption-fridge" ? load.burns === "ac" : load.supply === "ac";

function workedOut(plan: StayPlan, load: Load, inverter: Inverter | null, nominal_V: number): LoadDemand {
  if (inverter === null && takesAc(load)) return idle(plan, load);
  switch (load.kind) {
    case "appliance":
      return applianceDemand(plan, load, inverter);
    case "compressor-fridge":
      return compressorDemand(plan, load, inverter);
    case "absorption-fridge":
      return absorptionDemand(plan, load, inverter, nominal_V);
  }
}

const bare = { campedLoss_W: null, campedElement_W: null, drivingElement_W: null, needsInverter: null };
const noCabinet = { inside_C: null, stretched: null, gas_g: null };

/** An ac load without an inverter: it draws nothing, and cools nothing. */
const idle = (plan: StayPlan, load: Load): LoadDemand => ({
  load,
  ...byPart(plan, null, none(plan)),
  ...bare,
  ...noCabinet,
});

/** What is drawn, in the part of the hour that the load is used at all. */
function byPart(plan: StayPlan, only: Appliance["only"], watts: Float64Array) {
  return {
    camped_W: only === "driving" ? none(plan) : watts,
    driving_W: only === "camped" ? none(plan) : watts,
  };
}

function applianceDemand(plan: StayPlan, load: Appliance, inverter: Inverter | null): LoadDemand {
  const share = runShare(load, plan.air_C);
  const { mean_W } = applianceWatts(load, share);
  if (load.supply === "dc" || inverter === null)
    return { load, ...byPart(plan, load.only, mean_W), ...bare, ...noCabinet };
  const loss_W = applianceInverterLoss_W(load, share, inverter);
  return { load, ...throughInverter(plan, load.only, mean_W, loss_W), ...noCabinet };
}

function throughInverter(plan: StayPlan, only: Appliance["only"], mean_W: Float64Array, loss_W: Float64Array) {
  return {
    ...byPart(plan, only, add(mean_W, loss_W)),
    ...bare,
    campedLoss_W: only === "driving" ? none(plan) : loss_W,
    needsInverter: Uint8Array.from(mean_W, (watts) => (watts > 0 ? 1 : 0)),
  };
}

function compressorDemand(plan: StayPlan, load: CompressorFridge, inverter: Inverter | null): LoadDemand {
  const { power_W, inside_C, stretched } = compressorFridge(load, plan.bay_C);
  const cabinet = { inside_C, stretched, gas_g: null };
  if (load.supply === "dc" || inverter === null)
    return { load, ...byPart(plan, load.only, power_W), ...bare, ...cabinet };
  const perRun = inverterRunningLoss_W(inverter, load.compressor_W) / load.compressor_W;
  const loss_W = power_W.map((watts) => watts * perRun);
  return { load, ...throughInverter(plan, load.only, power_W, loss_W), ...cabinet };
}

/** Parked, it never drives; on the trip its element runs in the driven part. Two calls, since the cabinet remembers. */
function absorptionDemand(
  plan: StayPlan,
  load: AbsorptionFridge,
  inverter: Inverter | null,
  nominal_V: number,
): LoadDemand {
  const parked = absorptionFridge(load, plan.bay_C, null);
  const travelled = absorptionFridge(load, plan.bay_C, plan.parts.driving);
  const element = (share: Float64Array) => share.map((on) => on * load.element_dc_W);
  const cabinet = { inside_C: parked.inside_C, stretched: null, gas_g: parked.gas_g };
  if (load.burns === "ac" && inverter !== null) {
    const mean_W = parked.elementAcShare.map((on) => on * load.element_ac_W);
    const perRun = inverterRunningLoss_W(inverter, load.element_ac_W);
    const loss_W = parked.elementAcShare.map((on) => on * perRun);
    return { load, ...throughInverter(plan, null, mean_W, loss_W), ...cabinet };
  }
  return {
    load,
    camped_W: parked.controls_A.map((amps) => amps * nominal_V),
    driving_W: none(plan),
    ...bare,
    campedElement_W: load.burns === "dc" ? element(parked.campedElement) : null,
    drivingElement_W: element(travelled.drivingElement),
    ...cabinet,
  };
}

/** What all loads together ask in one part of the hours. */
export interface PartLoad extends HourlyLoads {
  /** idle draw of the inverter inside `load_W` [W] */
  readonly idle_W: Float64Array | null;
}

/** Adds demands up, and the inverter's idle draw for every whole hour with any ac use. */
export function together(
  plan: StayPlan,
  demands: readonly LoadDemand[],
  inverter: Inverter | null,
  part: "camped" | "driving" | "mains",
): PartLoad {
  const loads = hourlyLoads(plan.hours);
  for (const demand of demands) {
    if (part === "mains" && demand.needsInverter !== null) continue;
    addTo(loads.load_W, part === "driving" ? demand.driving_W : demand.camped_W);
    const element = part === "driving" ? demand.drivingElement_W : demand.campedElement_W;
    if (element !== null) addTo(loads.element_W, element);
  }
  const idle_W = part === "mains" ? null : idleDraw_W(plan, demands, inverter, part);
  if (idle_W !== null) addTo(loads.load_W, idle_W);
  return { ...loads, idle_W };
}

function idleDraw_W(
  plan: StayPlan,
  demands: readonly LoadDemand[],
  inverter: Inverter | null,
  part: "camped" | "driving",
): Float64Array | null {
  if (inverter === null) return null;
  const users = demands.filter(({ needsInverter }) => needsInverter !== null);
  const inUse = (i: number) =>
    users.some((demand) => (part === "driving" ? demand.driving_W : demand.camped_W)[i]! > 0);
  return Float64Array.from({ length: plan.hours }, (_, i) =>
    inverter.on === "always" || inUse(i) ? inverter.idle_W : 0,
  );
}

function addTo(sum: Float64Array, more: Float64Array): void {
  for (let i = 0; i < sum.length; i++) sum[i]! += more[i]!;
}

const add = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, i) => value + b[i]!);
