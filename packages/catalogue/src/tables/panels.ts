import type { SolarArray } from "@stayput/sim";
import type { Row } from "../row.ts";

/** A solar panel as it is sold. */
export interface PanelRow extends Row {
  /** at standard test conditions */
  readonly watts: number;
  readonly length_mm: number;
  readonly width_mm: number;
  readonly mass_kg: number;
  /** how it is meant to be fitted */
  readonly mount: SolarArray["mount"];
  readonly gamma_per_K: number;
  /** in the job's currency; none is known here */
  readonly price: null;
}

type Size = readonly [watts: number, length_mm: number, width_mm: number, mass_kg: number];

const framed: readonly Size[] = [
  [80, 780, 670, 6],
  [100, 1050, 540, 7],
  [120, 1200, 540, 8],
  [150, 1480, 670, 11],
  [175, 1490, 670, 11],
  [200, 1500, 690, 12],
  [220, 1640, 700, 13],
  [300, 1640, 990, 18],
  [370, 1750, 1040, 20],
  [410, 1720, 1130, 21],
  [440, 1760, 1130, 22],
];
const bonded: readonly Size[] = [
  [110, 1200, 540, 2.5],
  [160, 1500, 670, 3.5],
];
const folding: readonly Size[] = [
  [120, 1050, 960, 6],
  [200, 1340, 1060, 8],
  [300, 2200, 1060, 11],
];

/** Crystalline silicon of today: the middle of typical data sheets, -0.30 to -0.40 %/K (from memory). */
const gamma_per_K = -0.0035;

function rows(kind: string, mount: SolarArray["mount"], sizes: readonly Size[]): PanelRow[] {
  return sizes.map(([watts, length_mm, width_mm, mass_kg]) => ({
    id: `${kind}-${watts}`,
    name: `${watts} W ${kind} panel`,
    watts,
    length_mm,
    width_mm,
    mass_kg,
    mount,
    gamma_per_K,
    price: null,
    source: "typical data sheets of panels of this size",
    standing: "from memory",
  }));
}

/** Panels by kind and watts: framed for a roof, bonded flat, folding on the ground. */
export const panels: readonly PanelRow[] = [
  ...rows("framed", "flush", framed),
  ...rows("bonded", "bonded", bonded),
  ...rows("folding", "free", folding),
];
