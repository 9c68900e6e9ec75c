/** What was on the sheet when the page went away before the store had taken it. */
export interface Unsaved {
  readonly id: string;
  readonly revision: number;
  readonly text: string;
}

const stem = "stayput-unsaved-";

/** Writes at once, unlike the store: for the moment in which a page is taken away. A refusal is passed over. */
export function note(unsaved: Unsaved): void {
  try {
    localStorage.setItem(stem + unsaved.id, JSON.stringify(unsaved));
  } catch {
    // the store is asked all the same
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
    const value = JSON.parse(text ?? "null") as Partial<Unsaved> | null;
    const whole = typeof value?.id === "string" && typeof value.revision === "number" && typeof value.text === "string";
    return whole ? [value as Unsaved] : [];
  } catch {
    return [];
  }
}
