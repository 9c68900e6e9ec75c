import type { CompressorFridge } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { compressorCop, compressorNumbers } from "./compressorCop.ts";
import { cabinetCapacity_Wh_K } from "./lumped.ts";
import { requireAbove } from "./require.ts";

/** One insulated space held at one temperature. */
export interface Compartment {
  readonly set_C: number;
  /** conductance to the bay [W/K] */
  readonly ua_W_K: number;
}

/** A compressor fridge with its insulation solved. */
export interface FridgeModel {
  /** conductance of all compartments [W/K] */
  readonly ua_W_K: number;
  /** heat capacity of the stocked cabinet [Wh/K] */
  readonly capacity_Wh_K: number;
  /** how fast it drifts towards the bay when off: conductance over heat capacity, alike in all compartments [1/h] */
  readonly rate_per_h: number;
  /** the fresh compartment first; one of them where there is no freezer, or nothing but */
  readonly compartments: readonly Compartment[];
}

/**
 * Solves a compressor fridge's insulation from its one rating: at the rating ambient, nothing restocked,
 * P = Σ UA_i (T − T_i + 2)/COP_i + 1 W must be rated_Wh_day/24. A freezer share of the UA stands at −18 °C, the rest at
 * inside_C, each with the efficiency of its own temperature.
 *
 * @throws RangeError naming the field: a rating that the compressor could not draw, or that the controls alone use up, or
 * an ambient at which the fridge has nothing to do
 */
export function calibrateFridge(fridge: CompressorFridge): FridgeModel {
  requireFridge(fridge);
  const shares = compartmentShares(fridge);
  const perUa = shares.reduce((sum, { set_C, share }) => sum + share * ratedWattsPerUa(set_C, fridge.ratedAt_C), 0);
  if (!(perUa > 0))
    throw new RangeError(`${fridge.id}: ratedAt_C must be warmer than the cabinet, got ${fridge.ratedAt_C}`);
  const ua_W_K = (fridge.rated_Wh_day / 24 - compressorNumbers.controls_W) / perUa;
  const capacity_Wh_K = cabinetCapacity_Wh_K(fridge.volume_L);
  const compartments = shares.map(({ set_C, share }) => ({ set_C, ua_W_K: share * ua_W_K }));
  return { ua_W_K, capacity_Wh_K, rate_per_h: ua_W_K / capacity_Wh_K, compartments };
}

function requireFridge(fridge: CompressorFridge): void {
  const { controls_W } = compressorNumbers;
  mustLie(`${fridge.id}: inside_C`, fridge.inside_C, -40, 20);
  mustLie(`${fridge.id}: ratedAt_C`, fridge.ratedAt_C, -20, 60);
  mustLie(`${fridge.id}: freezerShare`, fridge.freezerShare, 0, 1);
  mustLie(`${fridge.id}: volume_L`, fridge.volume_L, 1, 5000);
  mustLie(`${fridge.id}: restock_kg_day`, fridge.restock_kg_day, 0, 1000);
  requireAbove(`${fridge.id}: compressor_W`, fridge.compressor_W, controls_W);
  requireAbove(`${fridge.id}: rated_Wh_day`, fridge.rated_Wh_day, 24 * controls_W);
  if (fridge.rated_Wh_day > 24 * fridge.compressor_W)
    throw new RangeError(
      `${fridge.id}: rated_Wh_day must be at most 24 h of compressor_W, ${24 * fridge.compressor_W}, got ${fridge.rated_Wh_day}`,
    );
}

function compartmentShares({ inside_C, freezerShare }: CompressorFridge): { set_C: number; share: number }[] {
  const fresh = { set_C: inside_C, share: 1 - freezerShare };
  const freezer = { set_C: compressorNumbers.freezer_C, share: freezerShare };
  return [fresh, freezer].filter(({ share }) => share > 0);
}

function ratedWattsPerUa(set_C: number, ambient_C: number): number {
  return Math.max(0, ambient_C - set_C + compressorNumbers.doors_K) / compressorCop(set_C, ambient_C);
}
