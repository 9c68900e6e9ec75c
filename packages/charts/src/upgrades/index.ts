import type { Picture } from "../paper/picture.ts";
import { upgradesChart, upgradesGeometry } from "./upgradesChart.ts";
import { upgradesReadout, upgradesSummary, upgradesTable } from "./upgradesFacts.ts";
import type { UpgradesPicture } from "./upgradesPicture.ts";

export * from "./upgradesPicture.ts";
export { upgradesChart, upgradesGeometry, upgradesReadout, upgradesSummary, upgradesTable };

/** What would change it. */
export const upgradesKind: Picture<UpgradesPicture> = {
  kind: "upgrades",
  chart: upgradesChart,
  table: upgradesTable,
  summary: upgradesSummary,
  readout: upgradesReadout,
  geometry: upgradesGeometry,
};
