import type { ChemistryId, Setup } from "../study.ts";
import type { HeldPair } from "./crossCheck.ts";
import type { HandbookInputs } from "./handbook.ts";
import { lossOfLoad, type DailyChange } from "./lossOfLoad.ts";
import { newBank } from "./sizeLadder.ts";
import { chanceIn, dailySums, knownPairs, type Trial } from "./trial.ts";

/** Steps that a store is cut into for the daily walk (chosen: finer changes nothing that is told). */
const store_steps = 48;

/** A pair under a trial's skies: the trip hour by hour, and the long run by daily sums on the handbook's usable store. */
export function holdPair(
  trial: Trial,
  setup: Setup,
  inputs: HandbookInputs,
  chemistry: ChemistryId,
  bank_Ah: number,
  array_W: number,
): HeldPair {
  const banks = [newBank(setup, chemistry, Math.max(1, bank_Ah))];
  const chance = chanceIn(knownPairs(trial, { banks, arrays_W: [array_W] }), 0, 0);
  const store_Wh = Math.max(1, bank_Ah) * inputs.nominal_V * inputs.depth * inputs.temperatureFactor;
  const counts = new Map<number, number>();
  const days = dailySums(trial, array_W);
  for (const { sun_Wh, load_Wh } of days) {
    const net_Wh = sun_Wh - load_Wh;
    const steps = Math.round((store_steps * (net_Wh > 0 ? net_Wh * inputs.bankEfficiency : net_Wh)) / store_Wh);
    counts.set(steps, (counts.get(steps) ?? 0) + 1);
  }
  const changes = [...counts].map(([steps, count]): DailyChange => ({ steps, chance: count / days.length }));
  return { chance, shortDays: lossOfLoad(store_steps, changes) };
}
