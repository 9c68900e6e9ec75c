import { chargeWhenShown_Ah, resistanceAt_Ohm, restedVolts_V, type BankModel } from "../bank/index.ts";
import { inverterRunningLoss_W } from "../loads/index.ts";
import type { Inverter, Load } from "../study.ts";
import type { PeakAnswer } from "./types.ts";
import type { LoadPeak } from "./wiringTypes.ts";

/** What a peak needs to know of a bank; charge is shown state of charge, 0 to 1. */
export interface PeakBank {
  /** volts at rest [V], rising with charge */
  readonly rested_V: (charge: number) => number;
  /** inner resistance [ohm], falling with charge */
  readonly resistance_Ohm: (charge: number) => number;
  /** volts under load at which loads drop; -Infinity where only a BMS drops them */
  readonly cutOff_V: number;
  /** most amps that a BMS lets out; Infinity where there is none */
  readonly most_A: number;
  readonly nominal_V: number;
}

/** A BMS lets out this many amps for each Ah (common practice, no source). */
const bms_C = 1;

/** Where an inverter gives up on a 12 V bank by itself (common practice, no source). */
export const inverterLow_V = 10.5;

/** Loads under this at the bank are not peaks: 15 A at 12 V (chosen). */
const large_W = 180;

/**
 * A compressor's amps with its rotor held, over its running amps: what an inverter must start.
 * Source: RV rooftop air-conditioner installation table, 13 500 BTU/h: 68 A over 12.7 A (published).
 */
export const startFactor = 68 / 12.7;

/** The bank of a model, at rest: both tanks alike. */
export function peakBank(model: BankModel): PeakBank {
  const share = (charge: number) => Math.max(0, chargeWhenShown_Ah(model, charge)) / model.full_Ah;
  const hasBms = model.chemistry.cutOff_V === null;
  return {
    rested_V: (charge) => restedVolts_V(model, share(charge)),
    resistance_Ohm: (charge) => resistanceAt_Ohm(model, share(charge)),
    cutOff_V: model.cutOff_V,
    most_A: hasBms ? bms_C * model.bank.capacity_Ah : Infinity,
    nominal_V: model.bank.nominal_V,
  };
}

/** A source with a constant power on it. */
export interface UnderLoad {
  readonly draw_A: number;
  readonly volts_V: number;
  /** false where no current carries the power */
  readonly carried: boolean;
}

/**
 * Terminal volts and amps of a constant power behind a resistance: the lower root of R I² - E I + P = 0. Where no current
 * carries the power it stands at the most that can be drawn, E / 2R, and `carried` is false.
 */
export function underLoad(rested_V: number, resistance_Ohm: number, draw_W: number): UnderLoad {
  const root = rested_V ** 2 - 4 * resistance_Ohm * draw_W;
  const draw_A = root >= 0 ? (2 * draw_W) / (rested_V + Math.sqrt(root)) : rested_V / (2 * resistance_Ohm);
  return { draw_A, volts_V: rested_V - draw_A * resistance_Ohm, carried: root >= 0 };
}

/** Each large load, alone on the bank, at one state of charge. Pure; no load is left out but the small ones. */
export function peaks(
  loads: readonly Load[],
  inverter: Inverter | null,
  bank: PeakBank,
  charge: number,
  least_W = large_W,
): LoadPeak[] {
  if (!(charge >= 0 && charge <= 1)) throw new RangeError(`charge must be 0 to 1, got ${charge}`);
  return loads
    .map((load) => demandOf(load, inverter))
    .filter((demand) => demand.draw_W >= least_W)
    .map((demand) => peakOf(demand, inverter, bank, charge));
}

interface Demand {
  readonly load: Load;
  readonly ac_W: number;
  readonly draw_W: number;
  readonly start_W: number | null;
}

function demandOf(load: Load, inverter: Inverter | null): Demand {
  const { dc_W, ac_W, start_W } = running(load);
  const through_W = ac_W === 0 ? 0 : ac_W + (inverter ? inverter.idle_W + inverterRunningLoss_W(inverter, ac_W) : 0);
  return { load, ac_W, draw_W: dc_W + through_W, start_W };
}

function running(load: Load): { dc_W: number; ac_W: number; start_W: number | null } {
  const on = (supply: "dc" | "ac", watts: number, start_W: number | null) =>
    supply === "dc" ? { dc_W: watts, ac_W: 0, start_W: null } : { dc_W: 0, ac_W: watts, start_W };
  switch (load.kind) {
    case "appliance":
      if (load.only === "driving") return on("dc", 0, null);
      return on(load.supply, load.watts * load.count, load.surge_W ? load.surge_W * load.count : null);
    case "compressor-fridge":
      return on(load.supply, load.compressor_W, load.compressor_W * startFactor);
    case "absorption-fridge":
      if (load.burns === "gas") return on("dc", 0, null);
      return on(load.burns, load.burns === "dc" ? load.element_dc_W : load.element_ac_W, null);
  }
}

function peakOf(demand: Demand, inverter: Inverter | null, bank: PeakBank, charge: number): LoadPeak {
  const { load, ac_W, draw_W, start_W } = demand;
  const { draw_A, volts_V } = underLoad(bank.rested_V(charge), bank.resistance_Ohm(charge), draw_W);
  const verdict = verdictAt(demand, inverter, bank, charge);
  const tripsBelow = verdict === "no-inverter" ? null : tripCharge(demand, inverter, bank);
  const overSurge = inverter !== null && (start_W ?? ac_W) > inverter.surge_W;
  const peak = {
    load: load.id,
    name: load.name,
    draw_A,
    volts_V,
    verdict,
    draw_W,
    ac_W,
    start_W,
    overSurge,
    tripsBelow,
  };
  return { ...peak, sentence: sentenceOf(peak, inverter, charge) };
}

function verdictAt(demand: Demand, inverter: Inverter | null, bank: PeakBank, charge: number): PeakAnswer["verdict"] {
  const { ac_W, draw_W, start_W } = demand;
  if (ac_W > 0 && inverter === null) return "no-inverter";
  if (inverter !== null && ac_W > 0 && (ac_W > inverter.rated_W || (start_W ?? 0) > inverter.surge_W)) {
    return "inverter-overloaded";
  }
  const { draw_A, volts_V, carried } = underLoad(bank.rested_V(charge), bank.resistance_Ohm(charge), draw_W);
  if (draw_A > bank.most_A) return "bms-limit";
  const least_V = ac_W > 0 ? Math.max(bank.cutOff_V, (inverterLow_V * bank.nominal_V) / 12) : bank.cutOff_V;
  return carried && volts_V >= least_V ? "ok" : "below-cut-off";
}

/** The charge below which it trips, to a thousandth: volts rise and amps fall with charge, so bisection finds it. */
function tripCharge(demand: Demand, inverter: Inverter | null, bank: PeakBank): number | null {
  const runs = (charge: number) => verdictAt(demand, inverter, bank, charge) === "ok";
  return lowestCharge(runs);
}

/** The least charge from which something holds, given that it holds at every charge above: null: always; 1: never. */
export function lowestCharge(holds: (charge: number) => boolean): number | null {
  if (holds(0)) return null;
  if (!holds(1)) return 1;
  let low = 0;
  let high = 1;
  while (high - low > 0.0005) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const pct = (share: number): string => `${Math.round(share * 100)} %`;

function sentenceOf(peak: Omit<LoadPeak, "sentence">, inverter: Inverter | null, charge: number): string {
  const { name, draw_A, volts_V, ac_W, tripsBelow, verdict } = peak;
  if (verdict === "no-inverter") return `${name} needs an inverter, and there is none.`;
  if (verdict === "inverter-overloaded") return overloaded(peak, inverter);
  const at = `${name} draws ${draw_A.toFixed(0)} A and pulls the bank to ${volts_V.toFixed(1)} V at ${pct(charge)}`;
  if (verdict === "bms-limit")
    return `${at}: more than the battery's own protection (BMS) lets out, so it drops everything.`;
  const what = ac_W > 0 ? "the inverter" : "the cut-off";
  if (tripsBelow === null || tripsBelow < 0.02) return `${at}; it runs at any charge.`;
  if (tripsBelow >= 1) return `${at}: it trips ${what} even with the bank full.`;
  return `${at}; it trips ${what} below ${pct(tripsBelow)}.`;
}

function overloaded({ name, ac_W, start_W }: Omit<LoadPeak, "sentence">, inverter: Inverter | null): string {
  const { rated_W = 0, surge_W = 0 } = inverter ?? {};
  if (ac_W > rated_W) return `${name} takes ${ac_W.toFixed(0)} W, more than the inverter's ${rated_W} W for good.`;
  return `${name} starts at about ${(start_W ?? 0).toFixed(0)} W, more than the inverter's surge of ${surge_W} W.`;
}
