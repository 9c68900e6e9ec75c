import type { Picture } from "../paper/picture.ts";
import { chargeChart, chargeGeometry } from "./chargeChart.ts";
import { chargeReadout, chargeSummary, chargeTable } from "./chargeFacts.ts";
import { chargePanels, chargePanelsGeometry } from "./chargePanels.ts";
import type { ChargePicture } from "./chargePicture.ts";

export * from "./chargePicture.ts";
export { chargeChart, chargeGeometry, type ChargeOptions } from "./chargeChart.ts";
export { chargePanels, chargePanelsGeometry } from "./chargePanels.ts";
export { chargeReadout, chargeSummary, chargeTable } from "./chargeFacts.ts";

const facts = { table: chargeTable, summary: chargeSummary, readout: chargeReadout };

/** How long it lasts, all setups in one plot. */
export const chargeKind: Picture<ChargePicture> = {
  kind: "charge",
  chart: chargeChart,
  geometry: chargeGeometry,
  ...facts,
};

/** How long it lasts, one plot a setup, for narrow pages. */
export const chargePanelsKind: Picture<ChargePicture> = {
  kind: "charge-panels",
  chart: chargePanels,
  geometry: chargePanelsGeometry,
  ...facts,
};
