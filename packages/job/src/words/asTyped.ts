import type { Found, Keys } from "../faults/fault.ts";
import { oneLine } from "../faults/show.ts";
import type { Said } from "./readWords.ts";

/** Faults of values that were read from words, with the words given back, and what they came to where they do not say it. */
export function asTyped(found: readonly Found[], said: readonly Said[]): Found[] {
  const byPath = new Map(said.map((each) => [pathKey(each.keys), each]));
  return found.map((fault) => {
    const typed = byPath.get(pathKey(fault.keys));
    return typed === undefined ? fault : { ...fault, given: inWords(typed) };
  });
}

const pathKey = (keys: Keys): string => JSON.stringify(keys);

/** "-3 W" as it stands; "100 F" with the 37.78 that it makes, to four figures. */
function inWords({ text, value }: Said): string {
  const figure = Number.parseFloat(text.trim().replace("\u2212", "-").replace(",", "."));
  return figure === value ? oneLine(text) : `${oneLine(text)} (${Number(value.toPrecision(4))})`;
}
