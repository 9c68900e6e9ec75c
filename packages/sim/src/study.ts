/**
 * What the simulation is asked: plain data with every default already filled in. A parsed job fits these types as it
 * stands (packages/job fills the defaults and looks the place up), so nothing is converted twice. Hours are decimal clock
 * hours of standard time, 0 to 24; azimuth is degrees clockwise from north; shares are 0 to 1.
 */

/** Monthly climate of one point. */
export interface Climate {
  /** [deg], north positive, -90 to 90; the tables of climate reach from -60 to 72 */
  readonly latitude_deg: number;
  /** [deg], east positive; null where only the latitude is known: clock time is then taken as solar time */
  readonly longitude_deg: number | null;
  /** standard time's lead on UTC [h]; null with a null longitude */
  readonly utcOffset_h: number | null;
  /** mean daily global horizontal irradiation by month, January first [kWh/m²/day], 12 values */
  readonly ghi_kWh_m2_day: readonly number[];
  /** mean daily maximum air temperature by month [°C], 12 values */
  readonly tmax_C: readonly number[];
  /** mean daily minimum air temperature by month [°C], 12 values */
  readonly tmin_C: readonly number[];
  /** how strongly a day's sky follows the day before's: lag-1 of the Gaussian AR(1), 0 to 0.9 */
  readonly dayToDay: number;
}

/** Output lost between two clock hours while camped. `from` > `to` runs past midnight. */
export interface ShadeWindow {
  readonly from: number;
  readonly to: number;
  /** fraction of output lost, 0 to 1 */
  readonly lost: number;
}

/** Driving on days n, 2n, … after arrival. The hours lie inside the day on which it departs. */
export interface Drives {
  readonly everyNights: number;
  /** [h] */
  readonly hours: number;
  /** clock hour */
  readonly departs: number;
}

/** On mains on days n, 2n, … after arrival. */
export interface MainsStops {
  readonly everyNights: number;
  /** [h] */
  readonly hours: number;
  /** clock hour; may run past midnight */
  readonly from: number;
}

/**
 * When one arrives, for how long, how full, and what comes on the way. Day d of a trip counts from 0, the day of
 * arrival.
 */
export interface Trip {
  /** month of arrival, 1 to 12 */
  readonly month: number;
  /** day of the month of arrival, 1 to 31; arrival is at 15:00 */
  readonly day: number;
  /** nights to last, 1 to 60; the trip ends nights × 24 h after arrival */
  readonly nights: number;
  /** share of both tanks at arrival, 0 to 1 */
  readonly startCharge: number;
  /** how much warmer the fridge bay is than outside [K] */
  readonly bayOffset_C: number;
  readonly shade: readonly ShadeWindow[];
  readonly drives: Drives | null;
  readonly mains: MainsStops | null;
}

/** A window of the clock, or minutes at an hour. `everyDays: n` runs on days 0, n, 2n, … counted from arrival. */
export type Use =
  | { readonly from: number; readonly to: number; readonly duty: number; readonly everyDays: number }
  | { readonly at: number; readonly minutes: number; readonly everyDays: number };

interface LoadBase {
  readonly id: string;
  readonly name: string;
}

/** What draws its watts while it is used, and its standby watts the rest of the time. */
export interface Appliance extends LoadBase {
  readonly kind: "appliance";
  readonly supply: "dc" | "ac";
  /** running watts of one */
  readonly watts: number;
  readonly count: number;
  /** watts of one, the rest of the time */
  readonly standby_W: number;
  /** draw of one as it starts [W]; null or left out: its running watts */
  readonly surge_W?: number | null | undefined;
  readonly use: readonly Use[];
  /** runs only while the outside air is above, or below, a temperature [°C] */
  readonly outside: { readonly above_C?: number | undefined; readonly below_C?: number | undefined } | null;
  readonly only: "driving" | "camped" | null;
}

/** A fridge with a compressor, known by one rating: so many watt-hours a day in so warm a room. */
export interface CompressorFridge extends LoadBase {
  readonly kind: "compressor-fridge";
  readonly supply: "dc" | "ac";
  readonly rated_Wh_day: number;
  readonly ratedAt_C: number;
  readonly inside_C: number;
  readonly compressor_W: number;
  readonly volume_L: number;
  readonly restock_kg_day: number;
  /** share of the UA held at -18 °C, 0 to 1 */
  readonly freezerShare: number;
  /** volts at the fridge below which its own protection stops it; null or left out: 10.4 for each 12 V */
  readonly cutOut_V?: number | null | undefined;
  readonly only: "driving" | "camped" | null;
}

/**
 * A three-way fridge: heat from gas, or from an element on the bank or on ac. An element without a thermostat draws
 * for as long as it is on.
 */
export interface AbsorptionFridge extends LoadBase {
  readonly kind: "absorption-fridge";
  /** what it runs on when camped. On `gas` the 12 V element runs while driving only; `dc` and `ac` keep the element on. */
  readonly burns: "gas" | "dc" | "ac";
  /** element watts at nominal volts (12 or 24) */
  readonly element_dc_W: number;
  readonly element_ac_W: number;
  readonly gas_g_day: number;
  /** draw of the controls while on gas [A] */
  readonly controls_A: number;
  readonly volume_L: number;
  readonly thermostat: { readonly gas: boolean; readonly dc: boolean; readonly ac: boolean };
}

/** Something that runs. */
export type Load = Appliance | CompressorFridge | AbsorptionFridge;

/** AGM, gel and flooded lead-acid, or lithium iron phosphate; `chemistries` has what each stands for. */
export type ChemistryId = "agm" | "gel" | "flooded" | "lfp";

/** All the batteries that feed the loads, as one. */
export interface Bank {
  readonly chemistry: ChemistryId;
  readonly nominal_V: 12 | 24;
  /** at the 20 h rate, new, 25 °C [Ah] */
  readonly capacity_Ah: number;
  /** share of that capacity left, 0.05 to 1; a job file takes 0.1 to 1 */
  readonly condition: number;
  readonly where: "inside" | "outside";
  /** shown charge below which one would rather not go, 0 to 0.99, of a job file 0 to 0.95; null: the chemistry's own */
  readonly reserve: number | null;
  /** terminal volts under load at which loads drop; null: the chemistry's own (lithium: the BMS drops at 0 %) */
  readonly cutOff_V: number | null;
  /** charging volts; null: the chemistry's own */
  readonly absorption_V: number | null;
  /** rested volts of a 12 V bank by share of the available tank, rising; null: the chemistry's own */
  readonly restedVolts: readonly { readonly share: number; readonly volts: number }[] | null;
}

/** Panels that lie one way. Tilt is 0 (flat) to 90°, azimuth clockwise from north. */
export interface SolarArray {
  readonly name: string;
  /** at standard test conditions */
  readonly watts: number;
  readonly tilt_deg: number;
  readonly azimuth_deg: number;
  readonly mount: "flush" | "free" | "bonded";
  /** share lost to dirt, 0 to 1 */
  readonly soiling: number;
  /** power's temperature coefficient [1/K], negative */
  readonly gamma_per_K: number;
}

/**
 * What stands between arrays and bank: tracking the power of the panels (`mppt`) or joining them to the bank (`pwm`);
 * amps out.
 */
export interface SolarCharger {
  readonly kind: "mppt" | "pwm";
  readonly rated_A: number;
}

/** An alternator, or any supply the vehicle gives. */
export interface Source {
  readonly volts: number;
  /** what a variable-voltage alternator sits at for most of a drive; null where it is fixed */
  readonly low_V: number | null;
  /** share of a drive at `low_V` */
  readonly lowShare: number;
  /** amps left over for charging */
  readonly spare_A: number;
  /** what is known of the alternator: its rating, and what the vehicle itself takes on the road */
  readonly alternator?: { readonly rated_A: number; readonly vehicle_A: number } | null | undefined;
}

/** A piece of a path that current takes, in the order from the source. */
export type PathPiece =
  | { readonly kind: "fuse"; readonly rated_A: number; readonly name?: string | undefined }
  | {
      readonly kind: "cable";
      /** one way; the current goes there and back [m] */
      readonly length_m: number;
      readonly area_mm2: number;
      /** IEC 60228 class: 5 flexible, 2 stranded */
      readonly conductorClass: 2 | 5;
      readonly temp_C: number;
      readonly name?: string | undefined;
    }
  | {
      readonly kind: "plug";
      readonly limit_A: number;
      readonly resistance_mOhm: number;
      readonly name?: string | undefined;
    }
  /** fed on the way, at this point of the path: a three-way fridge's element, a stability-control module */
  | { readonly kind: "load"; readonly amps: number; readonly name?: string | undefined };

/** Charging on the road straight from the source, through a relay. */
export interface RelayFeed {
  readonly kind: "relay";
  readonly source: Source;
  readonly path: readonly PathPiece[];
}

/** Charging on the road through one or more dc-dc converters. */
export interface ConverterFeed {
  readonly kind: "converter";
  /** output amps of one */
  readonly rated_A: number;
  /** how many stand in parallel on the same path */
  readonly count: number;
  readonly efficiency: number;
  readonly minInput_V: number;
  readonly source: Source;
  readonly path: readonly PathPiece[];
}

/** How the bank is charged on the road. */
export type Feed = RelayFeed | ConverterFeed;

/** Makes ac of the bank. Losses: idle watts for each hour on, then shares of the load (Schmidt & Sauer 1996). */
export interface Inverter {
  readonly rated_W: number;
  readonly surge_W: number;
  readonly idle_W: number;
  /** best efficiency, from which both loss coefficients follow; null: 0.05 each */
  readonly peakEfficiency: number | null;
  /** `in-use`: on in hours that an ac load runs; `always`: on every hour */
  readonly on: "in-use" | "always";
}

/** Charges the bank where there is mains; amps out. */
export interface MainsCharger {
  readonly rated_A: number;
}

/** Another run of wire, from bank or panels to its far end; resistance counts there and back. */
export interface WireRun {
  readonly kind: "inverter" | "solar" | "fridge-feed";
  readonly name?: string | undefined;
  readonly path: readonly PathPiece[];
  /** of a fridge feed: the id of the load at its end */
  readonly load?: string | undefined;
}

/** What is fitted: now, or as a proposal. */
export interface Setup {
  readonly id: string;
  readonly name: string;
  readonly bank: Bank;
  readonly arrays: readonly SolarArray[];
  readonly solarCharger: SolarCharger | null;
  readonly feed: Feed | null;
  readonly inverter: Inverter | null;
  readonly mainsCharger: MainsCharger | null;
  readonly runs?: readonly WireRun[] | undefined;
  /** what runs with this setup: the job's loads less those dropped, with those added */
  readonly loads: readonly Load[];
  /** in the job's currency */
  readonly price: number;
  /** change of mass against what is fitted now [kg] */
  readonly mass_kg: number;
}

/** One question: a climate, a trip and the setups to hold against it. */
export interface Study {
  readonly climate: Climate;
  readonly trip: Trip;
  readonly setups: readonly Setup[];
}
