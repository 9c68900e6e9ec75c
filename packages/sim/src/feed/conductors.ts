/**
 * What a conductor's copper is by standard, and how much it resists: data only, each table with its source.
 */

/** One table of maximum conductor resistance at 20 °C. */
export interface ConductorTable {
  readonly name: string;
  readonly source: string;
  readonly standing: string;
  /** rising by area: nominal area [mm²], resistance of one conductor [ohm/km at 20 °C] */
  readonly rows: readonly { readonly area_mm2: number; readonly perKm_Ohm: number }[];
}

const rows = (pairs: readonly (readonly [number, number])[]): ConductorTable["rows"] =>
  pairs.map(([area_mm2, perKm_Ohm]) => ({ area_mm2, perKm_Ohm }));

const standing = "1.5 to 95 mm² as reproduced on several public pages; smaller and larger rows from memory";

/** Flexible conductors, plain copper: what automotive and battery cable is nearest to. */
export const class5Plain: ConductorTable = {
  name: "IEC 60228 class 5, plain copper",
  source: "IEC 60228, maximum resistance of class 5 flexible conductors, plain wires",
  standing,
  rows: rows([
    [0.5, 39.0],
    [0.75, 26.0],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
    [35, 0.554],
    [50, 0.386],
    [70, 0.272],
    [95, 0.206],
    [120, 0.161],
    [150, 0.129],
    [185, 0.106],
    [240, 0.0801],
  ]),
};

/** Flexible conductors, tinned copper: marine cable, and what outlasts salt and dust. */
export const class5Tinned: ConductorTable = {
  name: "IEC 60228 class 5, tinned copper",
  source: "IEC 60228, maximum resistance of class 5 flexible conductors, metal-coated wires",
  standing,
  rows: rows([
    [0.5, 40.1],
    [0.75, 26.7],
    [1, 20.0],
    [1.5, 13.7],
    [2.5, 8.21],
    [4, 5.09],
    [6, 3.39],
    [10, 1.95],
    [16, 1.24],
    [25, 0.795],
    [35, 0.565],
    [50, 0.393],
    [70, 0.277],
    [95, 0.21],
    [120, 0.164],
    [150, 0.132],
    [185, 0.108],
    [240, 0.0817],
  ]),
};

/** Stranded conductors, plain copper: building wire. */
export const class2Plain: ConductorTable = {
  name: "IEC 60228 class 2, plain copper",
  source: "IEC 60228, maximum resistance of class 2 stranded conductors, plain wires",
  standing,
  rows: rows([
    [0.5, 36.0],
    [0.75, 24.5],
    [1, 18.1],
    [1.5, 12.1],
    [2.5, 7.41],
    [4, 4.61],
    [6, 3.08],
    [10, 1.83],
    [16, 1.15],
    [25, 0.727],
    [35, 0.524],
    [50, 0.387],
    [70, 0.268],
    [95, 0.193],
    [120, 0.153],
    [150, 0.124],
    [185, 0.0991],
    [240, 0.0754],
  ]),
};

/** Copper's resistance rises by this share of its 20 °C value a kelvin. Source: IEC 60287, handbooks. [1/K] */
export const COPPER_PER_K = 0.00393;

/** Sizes on a shelf, class 5 [mm²]. Source: the rows of IEC 60228. */
export const standardAreas_mm2: readonly number[] = class5Plain.rows.map((row) => row.area_mm2);
