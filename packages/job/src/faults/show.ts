const LONGEST = 60;

/** A string quoted, cut short, with control and direction characters escaped, so that it can go to a terminal or a page. */
export function oneLine(text: string): string {
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  const quoted = JSON.stringify(short).replace(
    /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
  return text.length > LONGEST ? `${quoted} (${text.length} characters)` : quoted;
}

/** What was given, in a few words and on one line, whatever it is. */
export function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return oneLine(value);
  if (typeof value === "number" || typeof value === "boolean" || value === null) return String(value);
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (typeof value === "object") return "an object";
  return `a ${typeof value}`;
}
