import type { FridgeAnswer, SetupAnswer } from "@stayput/sim";
import { hoursSaid, whole } from "./numbers.ts";
import { plain } from "./plain.ts";

/** Hours for the food once the loads have dropped, and how each fridge fares while it has power. */
export function food({ food: hours, fridges }: SetupAnswer): string[] {
  return [...afterCutOff(hours), ...fridges.map(powered)];
}

/** Whether its food warms past 5 °C after a cut-off. */
export const passesInFood = ({ food: { hoursFromCutOffTo5C } }: SetupAnswer): boolean => hoursFromCutOffTo5C !== null;

function afterCutOff({ hoursFromCutOffTo5C, hoursFromCutOffTo8C, hoursAbove5C }: SetupAnswer["food"]): string[] {
  if (hoursFromCutOffTo5C === null) return [];
  const to8 = hoursFromCutOffTo8C === null ? "" : `, 8 °C after ${hoursSaid(hoursFromCutOffTo8C)}`;
  const above = hoursAbove5C === null ? "; power does not come back" : `; above 5 °C for ${hoursSaid(hoursAbove5C)}`;
  return [`Once flat, the food passes 5 °C after ${hoursSaid(hoursFromCutOffTo5C)}${to8}${above}.`];
}

function powered(fridge: FridgeAnswer): string {
  const [coldest, warmest] = [whole(fridge.coldest_C), whole(fridge.warmest_C)];
  const range = `${coldest === warmest ? coldest : `${coldest} to ${warmest}`} °C inside while it has power`;
  const stretched =
    fridge.hoursStretched_day >= 0.05
      ? `, ${hoursSaid(fridge.hoursStretched_day)} a day running without rest and not holding`
      : "";
  const gas = fridge.gas_g_day >= 0.5 ? `, ${whole(fridge.gas_g_day)} g of gas a day` : "";
  return `${plain(fridge.name, 40)}: ${range}${stretched}${gas}.`;
}
