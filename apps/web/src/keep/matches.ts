import type { Said } from "./head.ts";

/** Without accents and capitals, so that "cafe" finds "Café". */
const folded = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

/** Whether every word sought stands somewhere in the title, the customer or the place. */
export function matches(
  { title, customer, place }: Pick<Said, "title" | "customer" | "place">,
  sought: string,
): boolean {
  const words = folded(sought).split(/\s+/u).filter(Boolean);
  if (words.length === 0) return true;
  const text = folded(`${title}\n${customer}\n${place}`);
  return words.every((word) => text.includes(word));
}
