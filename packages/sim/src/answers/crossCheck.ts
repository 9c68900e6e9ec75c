import { bankTemp_C, planSetup, planStay, planeOf, shine } from "../stay/index.ts";
import type { SetupPlan } from "../stay/index.ts";
import type { ChemistryId, Setup, Study } from "../study.ts";
import {
  handbookArrayToLoad,
  handbookDerates,
  handbookFigures,
  handbookInverterEfficiency,
  handbookSize,
  handbookTemperatureFactor,
  type HandbookInputs,
  type HandbookSize,
} from "./handbook.ts";

/** The handbook's size beside the simulated one, and why they differ. */
export interface CrossCheckAnswer {
  readonly inputs: HandbookInputs;
  readonly handbook: HandbookSize;
  /** what the simulation holds against it */
  readonly simulated: { readonly bank_Ah: number; readonly array_W: number };
  readonly said: readonly string[];
  readonly standing: "from memory";
}

/**
 * The handbook's arithmetic for a setup's loads in the month of arrival, beside a size that the simulation found.
 * @param autonomy_days days without any sun that the handbook is asked to carry
 * @throws RangeError where the month gives less than 0.01 h of sun a day
 */
export function crossCheck(
  study: Study,
  setup: Setup,
  simulated: { readonly chemistry: ChemistryId; readonly bank_Ah: number; readonly array_W: number },
  autonomy_days: number,
): CrossCheckAnswer {
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  const setupPlan = planSetup(plan, setup);
  const inputs: HandbookInputs = {
    ...meanUse(setupPlan),
    inverterEfficiency: handbookInverterEfficiency,
    nominal_V: setup.bank.nominal_V,
    autonomy_days,
    ...handbookFigures[simulated.chemistry],
    temperatureFactor: handbookTemperatureFactor(simulated.chemistry, bankTemp_C(plan, setup.bank)),
    ageing: 0.8,
    sun_h_day: sunHours(setupPlan),
    arrayToLoad: handbookArrayToLoad,
    derates: handbookDerates,
  };
  const handbook = handbookSize(inputs);
  const { bank_Ah, array_W } = simulated;
  return {
    inputs,
    handbook,
    simulated: { bank_Ah, array_W },
    said: words(inputs, handbook, bank_Ah, array_W),
    standing: "from memory",
  };
}

/** Mean watt-hours a day of the trip: at the loads, the inverter's losses left to the handbook's efficiency. */
function meanUse({ plan, demands }: SetupPlan): { dc_Wh_day: number; ac_Wh_day: number } {
  const hours = plan.trip.nights * 24;
  const mean = (series: Float64Array | null) =>
    series === null ? 0 : series.subarray(0, hours).reduce((a, b) => a + b, 0) * (24 / hours);
  let dc_Wh_day = 0;
  let ac_Wh_day = 0;
  for (const { camped_W, campedLoss_W, campedElement_W, needsInverter } of demands) {
    if (needsInverter === null) dc_Wh_day += mean(camped_W) + mean(campedElement_W);
    else ac_Wh_day += mean(camped_W) - mean(campedLoss_W);
  }
  return { dc_Wh_day, ac_Wh_day };
}

/** Peak sun hours a day on the setup's largest array, average sky. */
function sunHours({ plan, setup }: SetupPlan): number {
  const [array] = [...setup.arrays].sort((a, b) => b.watts - a.watts);
  const plane = planeOf(plan, array?.tilt_deg ?? 0, array?.azimuth_deg ?? 0);
  shine(plan, plan.meanClearness);
  const days = Math.min(plan.days, plan.trip.nights);
  return plane.light_W_m2.subarray(0, days * 24).reduce((sum, light) => sum + light, 0) / 1000 / days;
}

function words(
  inputs: HandbookInputs,
  { bank_Ah, array_W }: HandbookSize,
  simulated_Ah: number,
  simulated_W: number,
): string[] {
  const beside = (simulated: number, handbook: number) =>
    simulated < 0.9 * handbook ? "less than" : simulated > 1.1 * handbook ? "more than" : "about";
  return [
    `Bank: the simulation asks ${beside(simulated_Ah, bank_Ah)} the handbook's ${Math.round(bank_Ah)} Ah. The handbook carries ${inputs.autonomy_days} days without any sun at all and lets the bank age to ${Math.round(inputs.ageing * 100)} %; the simulation counts what even dull days bring, a new bank, and draws down to the cut-off rather than to ${Math.round(inputs.depth * 100)} %.`,
    `Array: the simulation asks ${beside(simulated_W, array_W)} the handbook's ${Math.round(array_W)} W. The handbook makes the array carry ${inputs.arrayToLoad} times the load in the month for ever; the simulation lets a full bank run down over the nights asked.`,
  ];
}
