import type { SetupPlan } from "../stay/index.ts";
import type { FridgeAnswer } from "./types.ts";

/** Each fridge over the nights of the trip, parked and powered: how cold it stays, and what gas it burns. */
export function fridgesOf({ plan, demands }: SetupPlan): FridgeAnswer[] {
  const hours = plan.trip.nights * 24;
  return demands.flatMap(({ load, inside_C, stretched, gas_g }) => {
    if (inside_C === null) return [];
    const inside = inside_C.subarray(0, hours);
    const total = (series: ArrayLike<number> | null) =>
      series === null
        ? 0
        : Array.from(series)
            .slice(0, hours)
            .reduce((a, b) => a + b, 0);
    return [
      {
        id: load.id,
        name: load.name,
        warmest_C: Math.max(...inside),
        coldest_C: Math.min(...inside),
        hoursStretched_day: total(stretched) / plan.trip.nights,
        gas_g_day: total(gas_g) / plan.trip.nights,
      },
    ];
  });
}
