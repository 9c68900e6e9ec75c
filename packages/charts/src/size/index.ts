import type { Picture } from "../paper/picture.ts";
import { sizeChart } from "./sizeChart.ts";
import { sizeLadderTable, sizeReadout, sizeSummary, sizeTable } from "./sizeFacts.ts";
import { sizeGeometry, sizePointAt, type PlacedPoint, type SizeGeometry } from "./sizeGeometry.ts";
import type { SizePicture } from "./sizePicture.ts";

export * from "./sizePicture.ts";
export { sizeChart, sizeGeometry, sizeLadderTable, sizePointAt, sizeReadout, sizeSummary, sizeTable };
export type { PlacedPoint, SizeGeometry };

/** What size. */
export const sizeKind: Picture<SizePicture> = {
  kind: "size",
  chart: sizeChart,
  table: sizeTable,
  summary: sizeSummary,
  readout: sizeReadout,
  geometry: sizeGeometry,
};
