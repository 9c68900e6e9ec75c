import { awgArea_mm2, awgName, diameterCables, standardAreas_mm2 } from "@stayput/sim";
import type { Row } from "../row.ts";

/** A conductor as it is asked for at a counter. What it resists is in sim's tables, by its copper. */
export interface ConductorRow extends Row {
  /** how it is named: by copper, by gauge, or by the outside of its insulation */
  readonly soldBy: "area" | "gauge" | "diameter";
  /** copper of one conductor */
  readonly area_mm2: number;
}

/** Even gauges that are stocked, then 1 and the four noughts; 2/0 is -1 and 4/0 is -3, as in sim. Common practice. */
const gauges = [20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

/** Conductors on sale, thinnest first within each way of naming them. */
export const conductors: readonly ConductorRow[] = [
  ...standardAreas_mm2.map((area_mm2): ConductorRow => {
    return {
      id: `mm2-${area_mm2}`,
      name: `${area_mm2} mm²`,
      soldBy: "area",
      area_mm2,
      source: "IEC 60228 nominal areas",
      standing: "published",
    };
  }),
  ...gauges.map((gauge): ConductorRow => {
    return {
      id: `awg-${gauge > 0 ? gauge : `${1 - gauge}-0`}`,
      name: awgName(gauge),
      soldBy: "gauge",
      area_mm2: awgArea_mm2(gauge),
      source: "ASTM B258, by its geometric definition",
      standing: "own computation from the published equation",
    };
  }),
  ...diameterCables.map(({ diameter_mm, area_mm2 }): ConductorRow => {
    return {
      id: `auto-${diameter_mm}`,
      name: `${diameter_mm} mm auto, sold by its outside`,
      soldBy: "diameter",
      area_mm2,
      source: "what such cable usually holds; it differs from maker to maker",
      standing: "common practice, no source",
    };
  }),
];
