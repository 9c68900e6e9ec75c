/**
 * What an omitted field is taken to be, in one place, with where each figure comes from. A field whose default depends on
 * another (an inverter's idle on its rating) is null in a parsed job and is worked out in resolve/. What a chemistry does
 * of itself (reserve, cut-off, charging volts) is null to the end: the simulation has that table.
 * "Chosen" is ours, the reason beside it; "common practice" and "from memory" have no source to cite.
 */

export const tripDefaults = {
  /** full on arrival: people leave home charged (common practice) */
  startCharge: 1,
  /** closed joinery behind a small vent; chosen, so that ordinary jobs behave as practitioners report */
  bayOffset_C: 6,
  /** people strike camp in the morning (chosen) */
  departs: 9,
  /** a powered site is taken at the end of an afternoon (chosen) */
  mainsFrom: 18,
} as const;

export const placeDefaults = {
  /** lag-1 of daily clearness; Graham, Hollands & Huget 1988 */
  dayToDay: 0.29,
} as const;

export const loadDefaults = {
  /** a use is on for all of its window */
  duty: 1,
  /** a use is of every day */
  everyDays: 1,
  count: 1,
  standby_W: 0,
  /** most portable and fitted makers' rating points are given at 25 °C (common practice) */
  ratedAt_C: 25,
  /** the usual setting, and under the 5 °C of food safety (common practice) */
  inside_C: 4,
  restock_kg_day: 0,
  freezerShare: 0,
  /** chosen: between a portable (40 L) and a family fridge (190 L) */
  volume_L: 100,
  burns: "gas",
  /** what a family three-way fridge has (common practice) */
  element_dc_W: 170,
  element_ac_W: 190,
  gas_g_day: 270,
  /** board, fan and igniter of a fridge on gas (typical rating plates, from memory) */
  controls_A: 0.5,
  /** a gas valve and a mains element have one, a 12 V element seldom has (typical rating plates, from memory) */
  thermostat: { gas: true, dc: false, ac: true },
} as const;

export const bankDefaults = {
  nominal_V: 12,
  condition: 1,
  /** most are under a seat or in a front locker that opens inwards (chosen) */
  where: "inside",
} as const;

export const arrayDefaults = {
  /** flat on a roof */
  tilt_deg: 0,
  mount: "flush",
  /** dust of a touring roof (chosen) */
  soiling: 0.1,
  /** crystalline silicon of today, the middle of the -0.30 to -0.40 %/K of typical data sheets (from memory) */
  gamma_per_K: -0.0035,
} as const;

export const feedDefaults = {
  /** a fixed-voltage alternator, warm, for each 12 V (common practice) */
  voltsPer12V: 14.2,
  /** share of a drive that a variable-voltage alternator sits low (chosen: most of it) */
  lowShare: 0.8,
  /** what an alternator has over once the vehicle's own needs are met (chosen, on the low side) */
  spare_A: 40,
  /** engine, lamps, fans (common practice) */
  vehicle_A: 25,
  /** flexible automotive cable; IEC 60228 */
  conductorClass: 5,
  /** under a floor or along a chassis in summer (chosen) */
  temp_C: 40,
  /** both poles of a heavy-current connector in good order (common practice) */
  plugResistance_mOhm: 0.5,
  converters: 1,
  /** the top of the 0.85 to 0.90 published for DC-DC chargers (a public technical page) */
  efficiency: 0.9,
  /** where most stop so as not to empty the starter battery (common practice) */
  minInput_V: 11.5,
} as const;

/** Volts of a source where none are given: a 24 V vehicle is taken only where a relay joins it to a 24 V bank. */
export const usualSource_V = (kind: unknown, nominal_V: number): number =>
  feedDefaults.voltsPer12V * (kind === "relay" ? nominal_V / 12 : 1);

export const inverterDefaults = {
  /** twice its rating for a few seconds (common practice) */
  surgePerRated: 2,
  /** share of its rating that it takes doing nothing (chosen: 14 W of 2000 W) */
  idlePerRated: 0.007,
  /** a small one still feeds its own board [W] (chosen) */
  idleLeast_W: 4,
  on: "in-use",
} as const;

/** What an inverter takes with nothing on, where that is not given [W]. */
export const usualIdle_W = (rated_W: number): number =>
  Math.max(inverterDefaults.idleLeast_W, rated_W * inverterDefaults.idlePerRated);

export const solarChargerDefaults = {
  /** taken where arrays are given without one, large enough not to limit them; a note says so (chosen) */
  kind: "mppt",
  /** next size up in steps of this [A] (chosen) */
  step_A: 5,
  /** no larger one can be given either [A] */
  most_A: 1000,
} as const;

export const compressorDefaults = {
  /** running watts of a small and of a larger 12 V compressor, parted at this volume (common practice) */
  small_W: 50,
  large_W: 75,
  largeFrom_L: 100,
  /** at its rating point a compressor seldom runs more than this share of the time (chosen) */
  mostRun: 0.6,
} as const;

export const sizingDefaults = {
  chance: 0.9,
} as const;
