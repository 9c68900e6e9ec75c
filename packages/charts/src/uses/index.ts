import type { Picture } from "../paper/picture.ts";
import { usesChart, usesGeometry } from "./usesChart.ts";
import { usesReadout, usesSummary, usesTable } from "./usesFacts.ts";
import type { UsesPicture } from "./usesPicture.ts";

export * from "./usesPicture.ts";
export { usesChart, usesGeometry, usesReadout, usesSummary, usesTable };

/** Where it goes. */
export const usesKind: Picture<UsesPicture> = {
  kind: "uses",
  chart: usesChart,
  table: usesTable,
  summary: usesSummary,
  readout: usesReadout,
  geometry: usesGeometry,
};
