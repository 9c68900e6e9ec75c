import type { SolarArray } from "../study.ts";

/**
 * Figures of arrays and solar chargers, each with its source.
 */

/**
 * Ross coefficient: how much warmer than the air a cell is, per W/m² on it [K m²/W].
 * Source: Skoplaki & Palyvos (2009), Renewable Energy 34:23, table of mountings: free standing 0.021, flat roof with poor
 * ventilation 0.034, not ventilated 0.056.
 */
export const ROSS_K_m2_W: Readonly<Record<SolarArray["mount"], number>> = {
  free: 0.021,
  flush: 0.034,
  bonded: 0.056,
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
   * A pulse-width controller joins panel to bank, so the panel is a current source near its short-circuit current:
   * 1.03 of the rated current where a bank holds it below its best volts, 0.11 % a kelvin more when warm. Chosen, to fit
   * the single-diode values of a 36-cell panel (De Soto model) in the reference checks.
   */
  pwm: {
    /** volts at best power of the panel that goes with each 12 V of bank (36 cells). Common practice, no source. */
    panelVmp_V_per_12V: 18,
    currentOverRated: 1.03,
    currentPerK: 0.0011,
  },
} as const;
