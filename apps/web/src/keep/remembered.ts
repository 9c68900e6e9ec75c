/** Which job this tab has open, and which was open last in any: each browser has its own. */
const key = "stayput-open";

export function remember(id: string | null): void {
  for (const place of [() => sessionStorage, () => localStorage]) {
    try {
      if (id === null) place().removeItem(key);
      else place().setItem(key, id);
    } catch {
      // the next visit begins with the example
    }
  }
}

export function lastOpen(): string | null {
  try {
    return sessionStorage.getItem(key) ?? localStorage.getItem(key);
  } catch {
    return null;
  }
}
