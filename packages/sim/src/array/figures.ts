import type { SolarArray } from "../study.ts";

/**
 * Figures of arrays and solar chargers, each with its source.
 */

/**
 * Ross coefficient: how much warmer than the air a cell is, per W/m² on it [K m²/W].
 * Source: Skoplaki & Palyvos (2009), Renewable Energy 34:23, table of mountings: free standing 0.0208, not so well cooled
 * 0.0342 (a panel on a flat roof with a small gap), integrated in the roof 0.0563 (bonded, no gap).
 */
export const ROSS_K_m2_W: Readonly<Record<SolarArray["mount"], number>> = {
  free: 0.0208,
  flush: 0.0342,
  bonded: 0.0563,
};

/** Share of an array's output lost between panel and charger. Common practice, no source: 3 % is what runs are sized to. */
export const ARRAY_WIRING_LOSS = 0.03;

/** Cell temperature and irradiance that panels are rated at (IEC 60904-3 standard test conditions). */
export const RATED_CELL_C = 25;
export const RATED_W_m2 = 1000;

/** Solar chargers. */
export const SOLAR_CHARGERS = {
  /** Share of the array's output that reaches the bank. Common practice, no source: makers state 0.94 to 0.98. */
  mppt: { efficiency: 0.96 },
  /**
   * A pulse-width controller joins panel to bank, so the panel is a current source near its short-circuit current. Chosen:
   * 1.06 of the rated current at 25 °C and 0.0012 more a kelvin put its harvest, against the best power of a panel of the
   * default -0.0035 /K, within 0.01 of a single-diode (De Soto) 36-cell panel at 25 to 75 °C of cell. That panel's current
   * itself hardly rises (1.06, 1.07, 1.06, 1.04 at 25, 45, 60, 75 °C); it is its best power that falls faster, 0.45 %/K.
   */
  pwm: {
    /** volts at best power of the panel that goes with each 12 V of bank (36 cells). Common practice, no source. */
    panelVmp_V_per_12V: 18,
    currentOverRated: 1.06,
    currentPerK: 0.0012,
  },
} as const;
