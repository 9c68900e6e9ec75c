import type { Picture } from "../paper/picture.ts";
import { dayChart, dayGeometry } from "./dayChart.ts";
import { dayReadout, daySummary, dayTable } from "./dayFacts.ts";
import type { DayPicture } from "./dayPicture.ts";

export * from "./dayPicture.ts";
export { dayChart, dayGeometry, dayReadout, daySummary, dayTable };

/** A day of it. */
export const dayKind: Picture<DayPicture> = {
  kind: "day",
  chart: dayChart,
  table: dayTable,
  summary: daySummary,
  readout: dayReadout,
  geometry: dayGeometry,
};
