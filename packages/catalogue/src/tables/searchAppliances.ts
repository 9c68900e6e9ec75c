import { fold } from "../search/fold.ts";
import { match, ranked } from "../search/match.ts";
import { appliances, type ApplianceRow } from "./appliances.ts";
import { absorptionFridges, compressorFridges, type AbsorptionFridgeRow, type CompressorFridgeRow } from "./fridges.ts";

/** Anything that a job can list as a load. */
export type LoadRow = ApplianceRow | CompressorFridgeRow | AbsorptionFridgeRow;

/** Fridges first: they are what empties banks. */
export const loadRows: readonly LoadRow[] = [...compressorFridges, ...absorptionFridges, ...appliances];

/**
 * Loads that meet what is typed, best first: by name, id or the other words people use. Nothing typed gives the first
 * of them all.
 *
 * @param limit how many at most, 1 or more
 */
export function searchAppliances(text: string, limit = 10): LoadRow[] {
  const typed = fold(text);
  if (!typed) return loadRows.slice(0, limit);
  const score = (row: LoadRow) => match(typed, fold(row.name), [row.id, ...row.words].map(fold));
  return ranked(loadRows, score).slice(0, limit);
}
