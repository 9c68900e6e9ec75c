import { mustLie } from "../numeric/must.ts";
import { awgArea_mm2 } from "./awg.ts";

/** What a conductor carries for good, by published table. */
export const ampacityTable = {
  name: "ABYC E-11, single conductor, 105 °C insulation, 30 °C ambient",
  source: "ABYC E-11, allowable amperage of conductors under 50 V, 105 °C column",
  standing: "published table, met through public reproductions; the standard itself was not consulted",
  insulation_C: 105,
  /** thinnest first; 2/0 is -1 */
  rows: [
    [18, 20],
    [16, 25],
    [14, 35],
    [12, 45],
    [10, 60],
    [8, 80],
    [6, 120],
    [4, 160],
    [2, 210],
    [1, 245],
    [0, 285],
    [-1, 330],
    [-2, 385],
    [-3, 445],
  ] as readonly (readonly [gauge: number, amps: number])[],
  /** where it is hotter than 30 °C: an engine bay at 50 °C */
  engineSpace: 0.85,
  /** current-carrying conductors laid together, from this many on */
  bundles: [
    { from: 1, factor: 1 },
    { from: 3, factor: 0.7 },
    { from: 4, factor: 0.6 },
    { from: 7, factor: 0.5 },
  ],
} as const;

/** How a conductor is laid. */
export interface Laying {
  /** current-carrying conductors together, 1 to 24; a pair on its own is 2 */
  readonly bundle: number;
  readonly engineSpace: boolean;
}

/** What bundling and engine heat leave of an ampacity, 0 to 1. */
export function layingFactor({ bundle, engineSpace }: Laying): number {
  mustLie("bundle", bundle, 1, 24);
  const row = ampacityTable.bundles.findLast(({ from }) => bundle >= from);
  return (row?.factor ?? 1) * (engineSpace ? ampacityTable.engineSpace : 1);
}

/**
 * What a conductor carries for good: the row of the thickest gauge that has no more copper than it. Sizes between
 * gauges are never given more than the row below, the table having none for them.
 * @returns [A]; null where it is thinner than the table (18 AWG, 0.82 mm²)
 */
export function ampacity_A(area_mm2: number, laying: Laying): number | null {
  // a nominal size a hair under its gauge is that gauge: 1 part in 1000
  const row = ampacityTable.rows.findLast(([gauge]) => awgArea_mm2(gauge) <= area_mm2 * 1.001);
  return row ? row[1] * layingFactor(laying) : null;
}

/** The least copper that carries so many amps for good, as laid [mm²]; null beyond the table. */
export function areaForAmps_mm2(amps_A: number, laying: Laying): number | null {
  const row = ampacityTable.rows.find(([, amps]) => amps * layingFactor(laying) >= amps_A);
  return row ? awgArea_mm2(row[0]) : null;
}
