import { visit } from "./visit.ts";

/** What was on the sheet when the page went away before the store had taken it. */
export interface Unsaved {
  readonly id: string;
  /** the revision that this text goes on from, or an earlier one of the same visit's */
  readonly revision: number;
  /** the visit that noted it */
  readonly by: string;
  readonly text: string;
}

const stem = "stayput-unsaved-";

/**
 * Writes before it returns, unlike the store, and what is written outlives a page that dies in the next moment. Where it is
 * refused the store is asked all the same; an older note must not stand then, lest it be taken for the newest.
 */
export function note(id: string, revision: number, text: string): void {
  const unsaved: Unsaved = { id, revision, by: visit, text };
  try {
    localStorage.setItem(stem + id, JSON.stringify(unsaved));
  } catch {
    strike(id);
  }
}

export function strike(id: string): void {
  try {
    localStorage.removeItem(stem + id);
  } catch {
    // nothing was noted
  }
}

/** All that was noted and not struck since. */
export function noted(): Unsaved[] {
  try {
    const keys = Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? "");
    return keys.filter((key) => key.startsWith(stem)).flatMap((key) => entry(localStorage.getItem(key)));
  } catch {
    return [];
  }
}

function entry(text: string | null): Unsaved[] {
  try {
    const { id, revision, by = "", text: job } = JSON.parse(text ?? "null") as Partial<Unsaved>;
    const whole = typeof id === "string" && typeof revision === "number" && typeof job === "string";
    return whole ? [{ id, revision, by, text: job }] : [];
  } catch {
    return [];
  }
}
