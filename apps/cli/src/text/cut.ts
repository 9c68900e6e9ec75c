import stringWidth from "string-width";

const segmenter = new Intl.Segmenter(undefined, { granularity: "grapheme" });

/** As many whole characters as fit in a width in columns, at least one, so that no emoji is cut in two. */
export function cut(text: string, width: number): string {
  let kept = "";
  let used = 0;
  for (const { segment } of segmenter.segment(text)) {
    used += stringWidth(segment);
    if (used > width && kept !== "") break;
    kept += segment;
  }
  return kept;
}
