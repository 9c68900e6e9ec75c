import type { ChargeBand, ExplainAnswer, SetupAnswer } from "@stayput/sim";

/** Answers made up for the tests of the text: no output of the simulation, and meant as none. */
const horizon_h = 60 * 24;

/** Charge that falls in a straight line by `perDay` and swings a little with the sun. */
function falling(perDay: number): number[] {
  return Array.from({ length: horizon_h }, (_, h) => {
    const swing = 0.04 * Math.cos((2 * Math.PI * (h + 15 - 14)) / 24);
    return Math.min(1, Math.max(0, 0.95 - (perDay * h) / 24 + swing));
  });
}

const band = (slow: number, middle: number, fast: number): ChargeBand => ({
  p90: falling(slow),
  p50: falling(middle),
  p10: falling(fast),
  average: falling(middle),
  dark: falling(2 * fast),
});

export const tired: SetupAnswer = {
  id: "now",
  name: "As it came",
  use_Wh_day: {
    total: 1204,
    byLoad: [
      { id: "lights", name: "LED lights", Wh_day: 63, share: 63 / 1204 },
      { id: "fridge", name: "188 L fridge-freezer", Wh_day: 801, share: 801 / 1204 },
      { id: "kettle", name: "Kettle", Wh_day: 340, share: 340 / 1204 },
    ],
  },
  sun_Wh_day: {
    available: 905,
    used: 840,
    unused: 65,
    unusedWhy: [
      { cause: "bank-limit", Wh_day: 20 },
      { cause: "bank-full", Wh_day: 45 },
    ],
    overCharger: 31,
  },
  losses_Wh_day: { inverter: 61, charging: 70, selfDischarge: 3 },
  days: { dark: 1.52, average: 3.11, drawn: { p10: 2.24, p50: 2.9, p90: 4.06 } },
  reserveDays: { dark: 0.9, average: 1.7, drawn: { p10: 1.3, p50: 1.66, p90: 2.4 } },
  chanceOfLasting: 0.035,
  without: [
    { load: "fridge", name: "188 L fridge-freezer", days: null, daysP50: null },
    { load: "kettle", name: "Kettle", days: 6.2, daysP50: 5.8 },
    { load: "lights", name: "LED lights", days: 3.4, daysP50: 3.2 },
  ],
  food: { hoursFromCutOffTo5C: 0.8, hoursFromCutOffTo8C: 3.4, hoursAbove5C: 14.2 },
  fridges: [
    {
      id: "fridge",
      name: "188 L fridge-freezer",
      warmest_C: 6.1,
      coldest_C: 4,
      hoursStretched_day: 1.5,
      gas_g_day: 0,
    },
  ],
  peaks: [{ load: "kettle", name: "Kettle", draw_A: 141.3, volts_V: 11.28, verdict: "below-cut-off" }],
  cautions: [
    { code: "bulk-limit", text: "Makers of AGM banks advise no more than a quarter of the capacity in amps." },
  ],
  charge: band(0.2, 0.3, 0.4),
};

export const lithium: SetupAnswer = {
  ...tired,
  id: "lithium",
  name: "200 Ah lithium, 400 W",
  days: { dark: 2.1, average: null, drawn: { p10: 9.4, p50: null, p90: null } },
  reserveDays: { dark: 1.8, average: null, drawn: { p10: 6.2, p50: 31.6, p90: null } },
  chanceOfLasting: 1,
  food: { hoursFromCutOffTo5C: null, hoursFromCutOffTo8C: null, hoursAbove5C: null },
  peaks: [],
  cautions: [],
  charge: band(0, 0.01, 0.09),
};

export const answerOf = (...setups: SetupAnswer[]): ExplainAnswer => ({
  seed: 7,
  draws: 200,
  horizon_days: 60,
  nights: 6,
  setups,
});
