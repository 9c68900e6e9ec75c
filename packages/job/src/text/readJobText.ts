import type { ParsedJob, Refused } from "../parseJob.ts";
import { parseJobText } from "./parseJobText.ts";

/** A job from the text of a file, as parseJobText; the reader of units in words is loaded only if the text has need of it. */
export async function readJobText(text: string): Promise<ParsedJob | Refused> {
  const first = parseJobText(text);
  if (first.ok || first.needsWords !== true) return first;
  const { words } = await import("../quantities/index.ts");
  return parseJobText(text, { words });
}
