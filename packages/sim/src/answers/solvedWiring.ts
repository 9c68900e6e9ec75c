import { bankModel, type BankModel } from "../bank/index.ts";
import type { Setup } from "../study.ts";
import type { Caution } from "./types.ts";
import { wiringCautions } from "./wiringCautions.ts";
import { chargeRun, type NextStage } from "./wiringCharge.ts";
import { fridgeRuns, otherRuns } from "./wiringOther.ts";
import type { WiringAnswer } from "./wiringTypes.ts";

/** A charge run is looked at over minutes, so that the bank's acceptance is what it takes then and not an hour's mean. */
export const moment_h = 0.1;

export type SolvedWiring = Pick<WiringAnswer, "charge" | "others" | "fridges" | "cautions">;

/** Every run of a setup's wiring, and what is wrong with them. */
export function solvedWiring(setup: Setup, model: BankModel, next: NextStage | null): SolvedWiring {
  const charge = setup.feed ? chargeRun(setup.feed, model, next) : null;
  const others = otherRuns(setup, model);
  const fridges = fridgeRuns(setup, model);
  return { charge, others, fridges, cautions: wiringCautions(setup, charge, others, fridges) };
}

/**
 * What is wrong with one setup's feed and runs, for `explain`: a fridge that trips on its own feed first of all.
 * @param bankTemp_C of the bank [°C], -80 to 80
 */
export function feedCautions(setup: Setup, bankTemp_C: number): readonly Caution[] {
  return solvedWiring(setup, bankModel(setup.bank, bankTemp_C, moment_h), null).cautions;
}
