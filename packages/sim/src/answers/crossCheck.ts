import { mostCapacity_Ah } from "../bank/bankModel.ts";
import { arrivalHour, bankTemp_C, planSetup, planStay, planeOf, shine } from "../stay/index.ts";
import type { SetupPlan, Skies } from "../stay/index.ts";
import type { ChemistryId, Setup, Study } from "../study.ts";
import { checkChemistry } from "./checkSizeRequest.ts";
import { checkSkies } from "./checkSkies.ts";
import { sayCrossCheck } from "./crossCheckSaid.ts";
import {
  handbookAgeing,
  handbookArrayToLoad,
  handbookDerates,
  handbookFigures,
  handbookInverterEfficiency,
  handbookLeastSun_h,
  handbookSize,
  handbookTemperatureFactor,
  type HandbookInputs,
  type HandbookSize,
} from "./handbook.ts";
import { holdPair } from "./holdPair.ts";
import { makeTrial } from "./trial.ts";

/** Fewer skies than elsewhere: two chances beside one another, told in words. */
const crossCheckSkies: Skies = { seed: 1, draws: 100 };

/** A pair of bank and array, new, held to the trip and to the long run. */
export interface HeldPair {
  /** chance of lasting the trip as described, simulated */
  readonly chance: number;
  /** share of days, camped on without end in such weather, that the daily sums fall short */
  readonly shortDays: number;
}

/** The handbook's size beside the simulated one, and why they differ. */
export interface CrossCheckAnswer {
  readonly inputs: HandbookInputs;
  readonly handbook: HandbookSize;
  /** what the simulation holds against it */
  readonly simulated: { readonly bank_Ah: number; readonly array_W: number };
  /** of each pair under the drawn skies */
  readonly held: { readonly handbook: HeldPair; readonly simulated: HeldPair };
  readonly said: readonly string[];
  readonly standing: "from memory";
}

/**
 * The handbook's arithmetic for a setup's loads in the month of arrival, beside a size that the simulation found.
 * @param autonomy_days days without any sun that the handbook is asked to carry
 * @returns null where the handbook has no size to give: in polar night, since its array stands on the sun of the month, and
 * for more use than a bank can carry
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function crossCheck(
  study: Study,
  setup: Setup,
  simulated: { readonly chemistry: ChemistryId; readonly bank_Ah: number; readonly array_W: number },
  autonomy_days: number,
  skies: Skies = crossCheckSkies,
): CrossCheckAnswer | null {
  checkSkies(skies);
  checkChemistry("simulated.chemistry", simulated.chemistry);
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  const setupPlan = planSetup(plan, setup);
  const sun_h_day = sunHours(setupPlan);
  if (sun_h_day < handbookLeastSun_h) return null;
  const inputs: HandbookInputs = {
    ...meanUse(setupPlan),
    inverterEfficiency: handbookInverterEfficiency,
    nominal_V: setup.bank.nominal_V,
    autonomy_days,
    ...handbookFigures[simulated.chemistry],
    temperatureFactor: handbookTemperatureFactor(simulated.chemistry, bankTemp_C(plan, setup.bank)),
    ageing: handbookAgeing,
    sun_h_day,
    arrayToLoad: handbookArrayToLoad,
    derates: handbookDerates,
  };
  const handbook = handbookSize(inputs);
  if (handbook.bank_Ah > mostCapacity_Ah) return null;
  const { bank_Ah, array_W } = simulated;
  const trial = makeTrial(study, setup, study.trip.month, study.trip.nights, skies);
  const hold = (Ah: number, watts: number) => holdPair(trial, setup, inputs, simulated.chemistry, Ah, watts);
  const held = { handbook: hold(handbook.bank_Ah, handbook.array_W), simulated: hold(bank_Ah, array_W) };
  return {
    inputs,
    handbook,
    simulated: { bank_Ah, array_W },
    held,
    said: sayCrossCheck(study, inputs, handbook, { bank_Ah, array_W }, held, shadeLost(setupPlan)),
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

/** Share of a trip's light that the camp's shade takes from the setup's largest array, average sky. */
function shadeLost(setupPlan: SetupPlan): number {
  const { plan } = setupPlan;
  const light = averageLight(setupPlan).subarray(arrivalHour, arrivalHour + plan.hours);
  const kept = light.reduce((sum, value, i) => sum + value * plan.kept[i]!, 0);
  const whole = light.reduce((sum, value) => sum + value, 0);
  return whole > 0 ? 1 - kept / whole : 0;
}

/** Peak sun hours a day on the setup's largest array, average sky. */
function sunHours(setupPlan: SetupPlan): number {
  const { days, trip } = setupPlan.plan;
  const whole = Math.min(days, trip.nights);
  return (
    averageLight(setupPlan)
      .subarray(0, whole * 24)
      .reduce((sum, light) => sum + light, 0) /
    1000 /
    whole
  );
}

/** By calendar hour on the setup's largest array, on the level where there is none [W/m²]. */
function averageLight({ plan, setup }: SetupPlan): Float64Array {
  const [array] = [...setup.arrays].sort((a, b) => b.watts - a.watts);
  const plane = planeOf(plan, array?.tilt_deg ?? 0, array?.azimuth_deg ?? 0);
  shine(plan, plan.meanClearness);
  return plane.light_W_m2;
}
