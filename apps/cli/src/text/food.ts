import type { FridgeAnswer, SetupAnswer } from "@stayput/sim";
import { heading, letterOf } from "./heading.ts";
import { hoursSaid, whole } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";

/** How each fridge fares while it has power. */
export const fridgesPowered = ({ fridges }: SetupAnswer): string[] => fridges.map(powered);

/** Hours for the food once the loads have dropped, a row a setup; nothing where none drops them. */
export function foodOnceFlat(setups: readonly SetupAnswer[]): string[] {
  const rows = setups.flatMap(({ name, food: { hoursFromCutOffTo5C, hoursFromCutOffTo8C, hoursAbove5C } }, i) =>
    hoursFromCutOffTo5C === null
      ? []
      : [
          [
            letterOf(i),
            plain(name, 30),
            hoursSaid(hoursFromCutOffTo5C),
            hoursFromCutOffTo8C === null ? "never" : hoursSaid(hoursFromCutOffTo8C),
            hoursAbove5C === null ? "no power back" : hoursSaid(hoursAbove5C),
          ],
        ],
  );
  if (rows.length === 0) return [];
  const rule = "The food authority of the place sets the rule to follow.";
  return [heading("Food, once flat"), ...table(columns, rows), rule];
}

const columns: Column[] = [
  { head: "", align: "left" },
  { head: "setup", align: "left" },
  { head: "passes 5 °C\nafter", align: "right" },
  { head: "8 °C\nafter", align: "right" },
  { head: "stays above\n5 °C for", align: "right" },
];

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
