/** Heat that food holds. */
export interface FoodHeat {
  readonly above_kJ_kgK: number;
  readonly below_kJ_kgK: number;
  readonly freezing_kJ_kg: number;
  readonly freezesAt_C: number;
}

/**
 * Food's heat from its share of water p: 4.19 p + 0.84 (1 − p) unfrozen, 2.1 p + 0.84 (1 − p) frozen, 335 p to freeze.
 * Source: NZIFST, Unit Operations in Food Processing, appendix 7.
 *
 * @param water share by mass, 0 to 1
 */
export function foodFromWater(water: number, freezesAt_C: number): FoodHeat {
  const dry = 0.84 * (1 - water);
  return {
    above_kJ_kgK: 4.19 * water + dry,
    below_kJ_kgK: 2.1 * water + dry,
    freezing_kJ_kg: 335 * water,
    freezesAt_C,
  };
}

/** Mixed groceries and drinks. 85 % water and −2 °C: chosen, from memory of food tables; 3.69 kJ/kgK. */
export const groceries: FoodHeat = { ...foodFromWater(0.85, -2), above_kJ_kgK: 3.7 };

/** Heat to take from a kilogram to cool it from one temperature to another, freezing included [kJ/kg]; 0 if it is colder. */
export function coolingHeat_kJ_kg(food: FoodHeat, from_C: number, to_C: number): number {
  if (!(from_C > to_C)) return 0;
  const { freezesAt_C } = food;
  const above_K = Math.max(0, from_C - Math.max(to_C, freezesAt_C));
  const below_K = Math.max(0, Math.min(from_C, freezesAt_C) - to_C);
  const freezes = from_C > freezesAt_C && to_C < freezesAt_C;
  return food.above_kJ_kgK * above_K + food.below_kJ_kgK * below_K + (freezes ? food.freezing_kJ_kg : 0);
}
