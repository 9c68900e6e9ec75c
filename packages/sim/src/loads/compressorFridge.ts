import type { CompressorFridge } from "../study.ts";
import { calibrateFridge, type Compartment, type FridgeModel } from "./calibrateFridge.ts";
import { compressorCop, compressorNumbers } from "./compressorCop.ts";
import { coolingHeat_kJ_kg, groceries } from "./food.ts";
import { relaxed_C } from "./lumped.ts";
import { requireTemperatures } from "./require.ts";

/** A compressor fridge hour by hour, powered throughout. */
export interface CompressorFridgeHours {
  /** mean over each hour [W], 1 to compressor_W */
  readonly power_W: Float64Array;
  /** share of each hour that the compressor runs, controls counted as if it did: power over compressor watts, 0 to 1 */
  readonly run: Float64Array;
  /** cabinet at the end of each hour [°C]: the fresh compartment where there is one */
  readonly inside_C: Float64Array;
  /** 1 where it ran the whole hour and still did not hold its temperature */
  readonly stretched: Uint8Array;
}

/**
 * A compressor fridge's draw from the temperature of its bay. Each compartment is a lumped body: within an hour the
 * compressor takes the heat that brings it to its set temperature by the hour's end, doors and restocked goods included;
 * where that is more than the compressor can, it runs throughout and the cabinet warms, and it catches up later. In a bay
 * colder than the cabinet it stands still and the cabinet cools. Goods are chilled all day long from bay temperature, into
 * the fresh compartment (into the freezer, freezing included, where there is nothing else). It arrives cold.
 * Source: lumped-capacity balance; efficiency as in `compressorCop`.
 *
 * @param bay_C air around the fridge, one value an hour [°C]
 * @throws RangeError naming the field that is out of range
 */
export function compressorFridge(fridge: CompressorFridge, bay_C: Float64Array): CompressorFridgeHours {
  const model = calibrateFridge(fridge);
  requireTemperatures(`${fridge.id}: bay_C`, bay_C);
  const hours = emptyHours(bay_C.length);
  const { compartments } = model;
  const budget_W = fridge.compressor_W - compressorNumbers.controls_W;
  const over_K = compartments.map(() => 0);
  for (let i = 0; i < bay_C.length; i++) {
    const gains = compartments.map((c, n) => gain(c, model, bay_C[i]!, n === 0 ? fridge.restock_kg_day : 0));
    const asked_W = gains.map((g, n) => coolingAsked_W(g, over_K[n]!));
    const needed_W = asked_W.reduce((sum, q, n) => sum + q / copAt(compartments[n]!, over_K[n]!, bay_C[i]!), 0);
    const met = needed_W > budget_W ? budget_W / needed_W : 1;
    gains.forEach((g, n) => (over_K[n] = overAfterHour_K(g, met * asked_W[n]!, over_K[n]!)));
    hours.power_W[i] = compressorNumbers.controls_W + met * needed_W;
    hours.run[i] = hours.power_W[i]! / fridge.compressor_W;
    hours.inside_C[i] = compartments[0]!.set_C + over_K[0]!;
    hours.stretched[i] = met < 1 ? 1 : 0;
  }
  return hours;
}

function emptyHours(length: number): CompressorFridgeHours {
  return {
    power_W: new Float64Array(length),
    run: new Float64Array(length),
    inside_C: new Float64Array(length),
    stretched: new Uint8Array(length),
  };
}

/** The heat that a compartment gains in an hour: so much at its set temperature, and less by so much for each kelvin over. */
interface Gain {
  readonly heat_W: number;
  readonly conductance_W_K: number;
  /** conductance over heat capacity [1/h] */
  readonly rate_per_h: number;
}

/** Walls, doors, and goods that come in at bay temperature and leave their heat above the cabinet's. */
function gain(compartment: Compartment, { rate_per_h }: FridgeModel, bay_C: number, restock_kg_day: number): Gain {
  const { set_C } = compartment;
  const goods_W = (restock_kg_day * coolingHeat_kJ_kg(groceries, bay_C, set_C)) / 86.4; // kJ/day to W
  const goods_W_K = goods_W > 0 ? goods_W / (bay_C - set_C) : 0;
  const conductance_W_K = compartment.ua_W_K + goods_W_K;
  const heat_W = compartment.ua_W_K * (bay_C - set_C + compressorNumbers.doors_K) + goods_W;
  const capacity_Wh_K = compartment.ua_W_K / rate_per_h; // its part of the stock goes with its part of the walls
  return { heat_W, conductance_W_K, rate_per_h: conductance_W_K / capacity_Wh_K };
}

/** Mean cooling that leaves a compartment at its set temperature when the hour ends; none where it would end colder anyway. */
function coolingAsked_W({ heat_W, conductance_W_K, rate_per_h }: Gain, over_K: number): number {
  return Math.max(0, heat_W + (conductance_W_K * over_K) / Math.expm1(rate_per_h));
}

/** A cabinet that has warmed is easier to cool; one that has cooled below its set temperature is not being cooled. */
function copAt({ set_C }: Compartment, over_K: number, bay_C: number): number {
  return compressorCop(set_C + Math.max(0, over_K), bay_C);
}

/** How far over its set temperature a compartment ends the hour: a lumped body under steady gain and cooling. */
function overAfterHour_K({ heat_W, conductance_W_K, rate_per_h }: Gain, cooling_W: number, over_K: number): number {
  const after_K = relaxed_C(over_K, (heat_W - cooling_W) / conductance_W_K, rate_per_h, 1);
  return Math.abs(after_K) < 1e-9 ? 0 : after_K; // held exactly, but for rounding
}
