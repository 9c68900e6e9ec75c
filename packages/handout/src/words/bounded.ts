/** Marks that turn the direction of what follows them: they would turn our own words too. */
const turning = /[\u202a-\u202e\u2066-\u2069]/gu;
const control = /[\p{Cc}\p{Cs}\u2028\u2029]+/gu;

/** Units of UTF-16 that one character as read may have; a pile of accents beyond it is cut. */
const unitsEach = 12;

const characters = /* @__PURE__ */ new Intl.Segmenter("en", { granularity: "grapheme" });

/**
 * A person's text made fit for a line of print: on one line, without control characters and without marks that turn the
 * direction of the words after it, and of at most so many characters as read (an emoji is one), an ellipsis for the rest.
 * It is not escaped: templates do that.
 */
export function bounded(text: string, most: number): string {
  const head = text
    .slice(0, most * unitsEach)
    .replace(turning, "")
    .replace(control, " ")
    .trim();
  let kept = "";
  let count = 0;
  for (const { segment } of characters.segment(head)) {
    if (count === most) return `${kept.trimEnd()}…`;
    kept += segment.slice(0, unitsEach);
    count += 1;
  }
  return text.length > most * unitsEach ? `${kept.trimEnd()}…` : kept;
}
