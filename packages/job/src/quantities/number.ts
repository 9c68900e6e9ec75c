export type NumberText =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly accepted: string };

/**
 * Decimal commas made points; a comma before three figures is refused, since "1,200" can be read two ways, and so is more
 * than one sign in a number, as in "1.200,5".
 */
export function pointed(text: string): NumberText {
  if (!text.includes(",")) return { ok: true, text };
  const decimal = /^(\s*[-+\u2212]?\d+),(\d{1,2}|\d{4,9})(?![\d,.])/;
  if (decimal.test(text) && text.split(",").length === 2) return { ok: true, text: text.replace(decimal, "$1.$2") };
  const twoWays = /^\s*[-+\u2212]?\d+,\d{3}(?![\d,.])/.test(text);
  const why = twoWays
    ? ", since a comma before three figures can be read two ways"
    : ", with one point or comma at most";
  return { ok: false, accepted: `a number written 1200 or 1.2${why}` };
}

/** A bare number in words; null where there is more to it. */
export function bareNumber(text: string): number | null {
  const plain = text.trim().replace("\u2212", "-");
  if (!/^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d{1,3})?$/i.test(plain)) return null;
  const value = Number(plain);
  return Number.isFinite(value) ? value : null;
}

/** A number that was worked out, without the crumbs of binary fractions: 13.2, not 13.199999999999998. */
export const crumbless = (value: number): number => Number(value.toPrecision(12));
