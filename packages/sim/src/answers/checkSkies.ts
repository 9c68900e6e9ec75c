import { mustBeWhole } from "../numeric/must.ts";
import { drawCount, type Skies } from "../stay/index.ts";

/** @throws RangeError where there is not at least one sky */
export function checkSkies(skies: Skies): void {
  mustBeWhole("draws", drawCount(skies), 1, 100_000);
}
