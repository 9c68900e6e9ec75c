/**
 * What the simulation answers: plain data, the same shape for the command line, the web page and a worker's message.
 * Days are counted in 24 h from arrival at 15:00; null days mean "did not run down within the horizon".
 */

export type Days = number | null;

/** Days by which a tenth, half and nine tenths of the skies have it flat; never decreasing. */
export interface Spread {
  readonly p10: Days;
  readonly p50: Days;
  readonly p90: Days;
}

/** Days parked: without any sun, with each day at its month's mean, and over the drawn skies. */
export interface Autonomy {
  readonly dark: Days;
  readonly average: Days;
  readonly drawn: Spread;
}

/** What one load takes a day, under the average sky, and its share of all, 0 to 1. */
export interface LoadUse {
  readonly id: string;
  readonly name: string;
  /** what it takes at the bank's terminals, its share of the inverter's losses included */
  readonly Wh_day: number;
  readonly share: number;
}

/** Why sun went unused. */
export type UnusedCause = "bank-full" | "bank-limit" | "too-cold" | "loads-dropped";

/** How the food warms after a cut-off, in the fridge that passes 5 °C first [h]; null: it does not come to that. */
export interface FoodHours {
  readonly hoursFromCutOffTo5C: number | null;
  readonly hoursFromCutOffTo8C: number | null;
  readonly hoursAbove5C: number | null;
}

/** Something the person must be told. */
export interface Caution {
  readonly code: string;
  readonly text: string;
}

/**
 * All that `explain` says of one setup. `chanceOfLasting` is the share of skies under which the trip as travelled has
 * no drop.
 */
export interface SetupAnswer {
  readonly id: string;
  readonly name: string;
  readonly use_Wh_day: { readonly total: number; readonly byLoad: readonly LoadUse[] };
  readonly sun_Wh_day: {
    readonly available: number;
    readonly used: number;
    readonly unused: number;
    readonly unusedWhy: readonly { readonly cause: UnusedCause; readonly Wh_day: number }[];
    /** kept back by the solar charger's rating, and not in `available` */
    readonly overCharger: number;
  };
  /**
   * losses inside the totals above and in the bank, parked, average sky; `charging` is what goes into the bank and, at its
   * rested volts, is not in it after: charge not stored, and the volts that charging stands above them
   */
  readonly losses_Wh_day: { readonly inverter: number; readonly charging: number; readonly selfDischarge: number };
  readonly days: Autonomy;
  readonly reserveDays: Autonomy;
  readonly chanceOfLasting: number;
  readonly without: readonly {
    readonly load: string;
    readonly name: string;
    readonly days: Days;
    readonly daysP50: Days;
  }[];
  readonly food: FoodHours;
  /** each fridge under the average sky while powered */
  readonly fridges: readonly FridgeAnswer[];
  readonly peaks: readonly PeakAnswer[];
  readonly cautions: readonly Caution[];
  /** charge against days, parked: one value an hour from arrival */
  readonly charge: ChargeBand;
}

/** How one fridge keeps its temperature while powered. */
export interface FridgeAnswer {
  readonly id: string;
  readonly name: string;
  readonly warmest_C: number;
  readonly coldest_C: number;
  /** hours a day at full run, still not holding its temperature */
  readonly hoursStretched_day: number;
  readonly gas_g_day: number;
}

/** A large load at the lowest charge of the stay, average sky. */
export interface PeakAnswer {
  readonly load: string;
  readonly name: string;
  readonly draw_A: number;
  readonly volts_V: number;
  readonly verdict: "ok" | "inverter-overloaded" | "bms-limit" | "below-cut-off" | "no-inverter";
}

/** Shown state of charge, 0 to 1, hour by hour from arrival (value i stands at i hours), parked. */
export interface ChargeBand {
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
  readonly average: readonly number[];
  readonly dark: readonly number[];
}

/** What `explain` answers: the skies it was asked under, and each setup. */
export interface ExplainAnswer {
  /** null where the skies were given from outside */
  readonly seed: number | null;
  readonly draws: number;
  readonly horizon_days: number;
  readonly nights: number;
  readonly setups: readonly SetupAnswer[];
}

/** Round the year: the same trip begun in each month. */
export interface YearAnswer {
  readonly setups: readonly {
    readonly id: string;
    readonly name: string;
    /** twelve, January first */
    readonly months: readonly {
      readonly month: number;
      readonly average: Days;
      readonly drawn: Spread;
      readonly chance: number;
    }[];
  }[];
}

/** One bank with one array, held against the asked nights and chance. */
export interface SizePoint {
  readonly chemistry: "agm" | "gel" | "flooded" | "lfp";
  readonly bank_Ah: number;
  readonly array_W: number;
  /** in the worst of the asked months, 0 to 1 */
  readonly chance: number;
  readonly price: number | null;
  readonly mass_kg: number | null;
}

/** The chance of lasting over a ladder of banks and arrays, for the picture of sizes. */
export interface SizeGrid {
  readonly chemistry: "agm" | "gel" | "flooded" | "lfp";
  readonly banks_Ah: readonly number[];
  readonly arrays_W: readonly number[];
  /** chance[bank][array] */
  readonly chance: readonly (readonly number[])[];
}
