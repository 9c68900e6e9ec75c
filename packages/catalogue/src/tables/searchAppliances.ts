import { fold } from "../search/fold.ts";
import { search, type Searched } from "../search/match.ts";
import { appliances, type ApplianceRow } from "./appliances.ts";
import { absorptionFridges, compressorFridges, type AbsorptionFridgeRow, type CompressorFridgeRow } from "./fridges.ts";

/** Anything that a job can list as a load. */
export type LoadRow = ApplianceRow | CompressorFridgeRow | AbsorptionFridgeRow;

/** Fridges first: they are what empties banks. */
export const loadRows: readonly LoadRow[] = [...compressorFridges, ...absorptionFridges, ...appliances];

/**
 * Loads that meet what is typed, best first: by name, id or the other words people use; near spellings where nothing else
 * meets it. Nothing typed gives the first of them all.
 *
 * @param limit how many at most, 1 or more
 */
export function searchAppliances(text: string, limit = 10): LoadRow[] {
  const typed = fold(text);
  if (!typed) return loadRows.slice(0, limit);
  return search(entries(), typed)
    .slice(0, limit)
    .map(({ row }) => row);
}

interface Entry extends Searched {
  readonly row: LoadRow;
}

/** Whoever types "fri" means a fridge, not the fan behind one. */
const titleOf = ({ kind, name }: LoadRow): string => (kind === "appliance" ? name : `Fridge: ${name}`);

let index: readonly Entry[] | null = null;

function entries(): readonly Entry[] {
  return (index ??= loadRows.map((row) => ({
    row,
    title: fold(titleOf(row)),
    others: [row.id, ...row.words].map(fold),
  })));
}
