import { alongLine, ReadLine } from "../numeric/line.ts";
import { mustLie } from "../numeric/must.ts";
import type { Bank } from "../study.ts";
import { chemistries, monthHours_h, resistanceGrowth, tiredBelow, type Chemistry } from "./chemistries.ts";
import { tankStep, type TankStep } from "./twoTanks.ts";

/** A bank made ready to be stepped: everything that does not change from hour to hour. Amps are at the terminals. */
export interface BankModel {
  readonly bank: Bank;
  readonly chemistry: Chemistry;
  readonly temp_C: number;
  readonly nominal_V: number;
  /** 20 h capacity at this temperature and condition [Ah]: what shown charge counts in */
  readonly capacity_Ah: number;
  /** both tanks full [Ah] */
  readonly full_Ah: number;
  /** 1 / full_Ah */
  readonly perFull: number;
  /** the available tank full [Ah] */
  readonly available_Ah: number;
  readonly c: number;
  readonly k_per_h: number;
  readonly step_h: number;
  readonly stepsAnHour: number;
  readonly tank: TankStep;
  /** half of a step, a quarter, an eighth, … */
  readonly halves: readonly TankStep[];
  /** when full [Ω] */
  readonly resistance_Ohm: number;
  readonly absorption_V: number;
  readonly gap_V: number;
  /** one over the rested volts half empty: turns watts into amps near enough for a first guess [1/V] */
  readonly perGuessed_V: number;
  readonly bulk_A: number;
  /** [1/h]; 0 where there is no taper */
  readonly taper_per_h: number;
  /** amps stored for each missing Ah, meant over a step at absorption volts; all in one step where there is no taper, none too cold */
  readonly takenUp_per_h: number;
  /** the same by the volts at the terminals, in straight lines between the points of the chemistry's weak taper */
  readonly weakTakenUp_per_h: ReadLine;
  /** share of full from which the most that is taken falls, over 1 where it does not; and by what a unit of charge [A] */
  readonly endTaperFrom: number;
  readonly endTaper_A: number;
  readonly reserve: number;
  /** charge held when the reserve is shown [Ah] */
  readonly reserve_Ah: number;
  /** −Infinity where only the BMS drops the loads */
  readonly cutOff_V: number;
  readonly returns_V: number;
  /** share of charge that a step loses standing */
  readonly stepLoss: number;
  /** rested volts by charge available [Ah] */
  readonly volts: ReadLine;
  /** charge efficiency by share of full charge */
  readonly efficiency: ReadLine;
  readonly takesCharge: boolean;
}

/** What shown charge is counted in. */
export type ChargeScale = Pick<BankModel, "full_Ah" | "capacity_Ah">;

/** Largest bank that is taken [Ah]. */
export const mostCapacity_Ah = 100_000;

/** A step of an hour halved so often is two minutes. */
const halvings = 5;

/**
 * @param temp_C one temperature for the whole run [°C], −80 to 80; figures of a table are held level beyond its ends
 * @param step_h length of a step [h], 0.0001 to 1: one over a whole number, so that the steps of an hour fill it
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function bankModel(bank: Bank, temp_C: number, step_h = 1): BankModel {
  checkBank(bank, temp_C, step_h);
  const chemistry = chemistries[bank.chemistry];
  const { endTaper } = chemistry;
  const twelves = bank.nominal_V / 12;
  const reserve = bank.reserve ?? chemistry.reserve;
  const kept_Ah = bank.capacity_Ah * bank.condition;
  const capacity_Ah = kept_Ah * alongLine(chemistry.capacityByTemp, temp_C);
  const full_Ah = (capacity_Ah * chemistry.full_Ah) / 100;
  const available_Ah = chemistry.c * full_Ah;
  const taper_per_h = (bank.condition < tiredBelow ? chemistry.tiredTaper_per_h : chemistry.taper_per_h) ?? 0;
  const takesCharge = chemistry.coldest_C === null || temp_C >= chemistry.coldest_C;
  const cutOff_V = bank.cutOff_V ?? (chemistry.cutOff_V === null ? null : chemistry.cutOff_V * twelves);
  const rested = bank.restedVolts?.map(({ share, volts }) => [share, volts] as const) ?? chemistry.restedVolts;
  const usual_V = chemistry.absorption_V * twelves;
  const absorption_V = bank.absorption_V ?? usual_V;
  // by the volts themselves: a charger set low is as slow as a cable that leaves no more
  const rising = chemistry.weakTaper
    .toReversed()
    .map(([below_V, share]) => [usual_V - below_V * twelves, share] as const);
  const takenUp_per_h = (share: number): number =>
    takesCharge ? (taper_per_h > 0 ? 1 - Math.exp(-share * taper_per_h * step_h) : 1) / step_h : 0;
  return {
    bank,
    chemistry,
    temp_C,
    nominal_V: bank.nominal_V,
    capacity_Ah,
    full_Ah,
    perFull: 1 / full_Ah,
    available_Ah,
    c: chemistry.c,
    k_per_h: chemistry.k_per_h,
    step_h,
    stepsAnHour: Math.round(1 / step_h),
    tank: tankStep(chemistry.c, chemistry.k_per_h, step_h),
    halves: Array.from({ length: halvings }, (_, i) => tankStep(chemistry.c, chemistry.k_per_h, step_h / 2 ** (i + 1))),
    resistance_Ohm: (chemistry.resistance_mOhm / 1000) * (100 / bank.capacity_Ah) * twelves,
    absorption_V,
    gap_V: chemistry.gap_V * twelves,
    perGuessed_V: 1 / (alongLine(rested, 0.5) * twelves),
    bulk_A: chemistry.bulk_C * kept_Ah,
    taper_per_h,
    takenUp_per_h: takenUp_per_h(alongLine(rising, absorption_V)),
    weakTakenUp_per_h: new ReadLine(rising.map(([volts_V, share]) => [volts_V, takenUp_per_h(share)])),
    endTaperFrom: endTaper?.from ?? 2,
    endTaper_A: endTaper === null ? 0 : ((chemistry.bulk_C - endTaper.end_C) * kept_Ah) / (1 - endTaper.from),
    reserve,
    reserve_Ah: chargeWhenShown_Ah({ full_Ah, capacity_Ah }, reserve),
    cutOff_V: cutOff_V ?? -Infinity,
    returns_V: chemistry.returns_V * twelves,
    stepLoss: (chemistry.selfDischarge_per_month / monthHours_h) * step_h,
    volts: new ReadLine(rested.map(([share, volts]) => [share * available_Ah, volts * twelves])),
    efficiency: new ReadLine(chemistry.chargeEfficiency),
    takesCharge,
  };
}

function checkBank(bank: Bank, temp_C: number, step_h: number): void {
  mustLie("capacity_Ah", bank.capacity_Ah, 1, mostCapacity_Ah);
  mustLie("condition", bank.condition, 0.05, 1);
  if (bank.reserve !== null) mustLie("reserve", bank.reserve, 0, 0.99);
  mustLie("temp_C", temp_C, -80, 80);
  mustLie("step_h", step_h, 1e-4, 1);
  if (Math.abs(1 / step_h - Math.round(1 / step_h)) > 1e-6)
    throw new RangeError(`step_h must be one over a whole number, got ${step_h}`);
  if (!(bank.chemistry in chemistries))
    throw new RangeError(`chemistry must be agm, gel, flooded or lfp, got ${bank.chemistry}`);
}

/** Rested volts at a share of the available tank [V]. */
export const restedVolts_V = (model: BankModel, available: number): number =>
  model.volts.at(available * model.available_Ah);

const { at: growsTo, times: growsBy } = resistanceGrowth;
const perCharge = (growsBy - 1) / (1 - growsTo);
const atNone = 1 + perCharge;

/** Inner resistance at a charge, 0 to 1 [Ω]: grows in a straight line to double at 20 % and holds. */
export function resistanceAt_Ohm(model: BankModel, charge: number): number {
  const full_Ohm = model.resistance_Ohm;
  if (charge >= 1) return full_Ohm;
  if (charge <= growsTo) return full_Ohm * growsBy;
  return full_Ohm * (atNone - charge * perCharge);
}

/** The hour that a step lies in, counted from 0. @param step whole, 0 or more */
export const hourOf = ({ stepsAnHour }: BankModel, step: number): number =>
  stepsAnHour === 1 ? step : (step / stepsAnHour) | 0;

/** Shown state of charge, 0 to 1: counts down from full in units of the 20 h capacity. */
export function shownCharge(model: ChargeScale, q_Ah: number): number {
  const shown = 1 - (model.full_Ah - q_Ah) / model.capacity_Ah;
  return shown < 0 ? 0 : shown > 1 ? 1 : shown;
}

/** The charge held when so much is shown [Ah]; the inverse of `shownCharge` inside 0 to 1. */
export const chargeWhenShown_Ah = (model: ChargeScale, shown: number): number =>
  model.full_Ah - (1 - shown) * model.capacity_Ah;
