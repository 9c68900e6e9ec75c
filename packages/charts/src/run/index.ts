import type { Picture } from "../paper/picture.ts";
import { runChart, runGeometry } from "./runChart.ts";
import { runReadout, runSummary, runTable } from "./runFacts.ts";
import type { RunPicture } from "./runPicture.ts";

export * from "./runPicture.ts";
export { runChart, runGeometry, runReadout, runSummary, runTable };

/** Charge run. */
export const runKind: Picture<RunPicture> = {
  kind: "run",
  chart: runChart,
  table: runTable,
  summary: runSummary,
  readout: runReadout,
  geometry: runGeometry,
};
