import type { Picture } from "../paper/picture.ts";
import { yearChart, yearGeometry } from "./yearChart.ts";
import { yearReadout, yearSummary, yearTable } from "./yearFacts.ts";
import type { YearPicture } from "./yearPicture.ts";

export * from "./yearPicture.ts";
export { yearChart, yearGeometry, yearReadout, yearSummary, yearTable };

/** Round the year. */
export const yearKind: Picture<YearPicture> = {
  kind: "year",
  chart: yearChart,
  table: yearTable,
  summary: yearSummary,
  readout: yearReadout,
  geometry: yearGeometry,
};
