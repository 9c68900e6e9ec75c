import type { Row } from "../row.ts";

/** How clear the skies are where only the latitude is known. */
export interface SkyClass extends Row {
  readonly id: "clear" | "mixed" | "dull";
  /** monthly mean clearness: share of the sun above the air that reaches level ground, 0 to 1 */
  readonly clearness: number;
  readonly meaning: string;
}

/** The classes by name. */
export type SkyId = SkyClass["id"];

const source = "chosen: shared/climate/SOURCES.md has the grid these stand for; no published class limits used";

/** The three classes a job may name for a place that no table has. */
export const skyClasses: readonly SkyClass[] = [
  {
    id: "clear",
    name: "Clear",
    clearness: 0.65,
    meaning:
      "Dry country: blue skies most days, weeks without rain. Deserts, dry seasons, inland summers of the dry south.",
    source,
    standing: "common practice, no source",
  },
  {
    id: "mixed",
    name: "Mixed",
    clearness: 0.5,
    meaning: "Sun and cloud by turns, rain most weeks. Temperate summers, tropical coasts outside the rains.",
    source,
    standing: "common practice, no source",
  },
  {
    id: "dull",
    name: "Dull",
    clearness: 0.38,
    meaning: "Cloud most days, the sun now and then. Cool wet coasts, temperate winters, mountains in the rains.",
    source,
    standing: "common practice, no source",
  },
];
