import type { ChemistryId } from "../study.ts";

/**
 * What a chemistry does, for 100 Ah at the 20 h rate, 12 V, new, at 25 °C. Tables run by share, 0 to 1, in rising order.
 *
 * Sources, by field:
 * - `full_Ah`, `c`, `k_per_h` (AGM): least-squares fit of the two-tank capacity (Manwell & McGowan 1993) to a VRLA
 *   capacity-by-rate table, 100/93/82/60 Ah at 20/10/5/1 h, residuals under 0.1 Ah. Gel, flooded: typical, from memory.
 * - `taper_per_h` and AGM charge efficiency: set by a published bench test of an AGM charged at 14.4 V from 50 %.
 *   Flooded efficiency: Stevens & Corey 1996 (Sandia) for its shape, values from memory.
 * - `capacityByTemp`: VRLA class data sheets (lead-acid); LFP class data sheets.
 * - `restedVolts`, `resistance_mOhm`, `absorption_V`, `bulk_C`, `reserve`, `cutOff_V`, `returns_V`,
 *   `selfDischarge_per_month`: common practice, no source.
 * - `gap_V`, `tired*`, `weakTaper`: chosen, and for the weak taper no source was found.
 */
export interface Chemistry {
  readonly id: ChemistryId;
  readonly name: string;
  /** both tanks full [Ah per 100 Ah] */
  readonly full_Ah: number;
  /** share of charge in the available tank */
  readonly c: number;
  /** rate between the tanks [1/h] */
  readonly k_per_h: number;
  readonly resistance_mOhm: number;
  readonly absorption_V: number;
  /** what charging volts stand above the rested volts, at no current [V] */
  readonly gap_V: number;
  /** amps at the terminals per Ah of capacity */
  readonly bulk_C: number;
  /** makers' advice where it is lower than the bank will take; null: none */
  readonly advised_C: number | null;
  /** how fast the missing charge is taken up [1/h]; null: no taper, but see `endTaper` */
  readonly taper_per_h: number | null;
  readonly tiredTaper_per_h: number | null;
  /** share of the taper left when the terminals stand below the absorption volts by so much [V] */
  readonly weakTaper: readonly (readonly [below_V: number, share: number])[];
  /** lithium: from this charge on, the limit falls in a line to `end_C` at full */
  readonly endTaper: { readonly from: number; readonly end_C: number } | null;
  readonly chargeEfficiency: readonly (readonly [charge: number, efficiency: number])[];
  readonly restedVolts: readonly (readonly [available: number, volts: number])[];
  readonly reserve: number;
  /** null: the BMS opens at 0 % */
  readonly cutOff_V: number | null;
  readonly returns_V: number;
  readonly selfDischarge_per_month: number;
  readonly capacityByTemp: readonly (readonly [temp_C: number, factor: number])[];
  /** below this bank temperature no charge is taken [°C]; null: none */
  readonly coldest_C: number | null;
}

const leadVolts = [
  [0, 10.6],
  [0.1, 11.45],
  [0.25, 11.85],
  [0.5, 12.15],
  [0.75, 12.5],
  [1, 12.85],
] as const;

/** For discharges over an hour; −10 °C from a second data sheet. */
const leadCapacityByTemp = [
  [-10, 0.74],
  [0, 0.84],
  [5, 0.88],
  [10, 0.9],
  [15, 0.94],
  [20, 0.99],
  [25, 1],
  [30, 1.03],
  [35, 1.04],
  [40, 1.05],
] as const;

/** At 14.4, 13.8 and 13.4 V the taper is 1.1, 0.4 and 0.15 /h (chosen, no source found); none at the rested volts of a full bank. */
const leadWeakTaper = [
  [0, 1],
  [0.6, 0.4 / 1.1],
  [1.0, 0.15 / 1.1],
  [1.55, 0],
] as const;

const vrlaEfficiency = [
  [0, 0.98],
  [0.8, 0.98],
  [0.9, 0.91],
  [1, 0.8],
] as const;

const lead = {
  gap_V: 0.75,
  weakTaper: leadWeakTaper,
  endTaper: null,
  reserve: 0.5,
  cutOff_V: 11.5,
  returns_V: 12.6,
  selfDischarge_per_month: 0.04,
  capacityByTemp: leadCapacityByTemp,
  coldest_C: null,
} as const;

/** Every figure of each chemistry, with its source beside it. */
export const chemistries: Readonly<Record<ChemistryId, Chemistry>> = {
  agm: {
    ...lead,
    id: "agm",
    name: "AGM",
    full_Ah: 108.4,
    c: 0.476,
    k_per_h: 0.661,
    resistance_mOhm: 5,
    absorption_V: 14.4,
    bulk_C: 0.45,
    advised_C: 0.25,
    taper_per_h: 1.1,
    tiredTaper_per_h: 0.6,
    chargeEfficiency: vrlaEfficiency,
    restedVolts: leadVolts,
  },
  gel: {
    ...lead,
    id: "gel",
    name: "gel",
    full_Ah: 106.8,
    c: 0.42,
    k_per_h: 1.018,
    resistance_mOhm: 6,
    absorption_V: 14.2,
    bulk_C: 0.2,
    advised_C: null,
    taper_per_h: 1,
    tiredTaper_per_h: 0.6,
    chargeEfficiency: vrlaEfficiency,
    restedVolts: leadVolts,
  },
  flooded: {
    ...lead,
    id: "flooded",
    name: "flooded lead-acid",
    full_Ah: 109,
    c: 0.35,
    k_per_h: 1.029,
    resistance_mOhm: 5,
    absorption_V: 14.4,
    bulk_C: 0.2,
    advised_C: null,
    taper_per_h: 0.9,
    tiredTaper_per_h: 0.6,
    chargeEfficiency: [
      [0, 0.97],
      [0.7, 0.97],
      [0.8, 0.93],
      [0.9, 0.75],
      [1, 0.5],
    ],
    restedVolts: leadVolts.map(([share, volts]) => [share, Number((volts - 0.15).toFixed(2))] as const),
  },
  lfp: {
    id: "lfp",
    name: "lithium iron phosphate",
    full_Ah: 100,
    c: 1,
    k_per_h: 1, // one tank: the rate has nothing to do
    resistance_mOhm: 4,
    absorption_V: 14.4,
    gap_V: 0.05,
    bulk_C: 0.5,
    advised_C: null,
    taper_per_h: null,
    tiredTaper_per_h: null,
    weakTaper: [[0, 1]],
    endTaper: { from: 0.97, end_C: 0.05 },
    chargeEfficiency: [[0, 0.995]],
    restedVolts: [
      [0, 10.8],
      [0.05, 12],
      [0.1, 12.5],
      [0.2, 12.9],
      [0.3, 13],
      [0.4, 13.1],
      [0.5, 13.15],
      [0.7, 13.25],
      [0.9, 13.32],
      [1, 13.5],
    ],
    reserve: 0.1,
    cutOff_V: null,
    returns_V: 13,
    selfDischarge_per_month: 0.03,
    capacityByTemp: [
      [-20, 0.5],
      [0, 0.8],
      [25, 1],
    ],
    coldest_C: 0,
  },
};

/** Hours in a month, for self-discharge: 365.25 × 24 / 12. */
export const monthHours_h = 730.5;

/** Resistance grows in a straight line from full to this multiple at this charge, and holds there (chosen). */
export const resistanceGrowth = { at: 0.2, times: 2 } as const;

/** Below this condition the taper goes to its tired value (chosen). */
export const tiredBelow = 0.8;
