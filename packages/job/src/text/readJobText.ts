import type { ParsedJob, Refused } from "../parseJob.ts";
import { loadNearestPlaces } from "../faults/noSuchPlace.ts";
import { parseJobText } from "./parseJobText.ts";

/**
 * A job from the text of a file, as parseJobText, and its places are looked up. The reader of units in words is loaded only
 * if the text has need of it.
 */
export async function readJobText(text: string): Promise<ParsedJob | Refused> {
  const nearestPlaces = await loadNearestPlaces();
  const first = parseJobText(text, { nearestPlaces });
  if (first.ok || first.needsWords !== true) return first;
  const { words } = await import("../quantities/index.ts");
  return parseJobText(text, { nearestPlaces, words });
}
