/** A section's head: its name in capitals, and after it what it is of. */
export function heading(name: string, of = ""): string {
  return of === "" ? name.toUpperCase() : `${name.toUpperCase()}: ${of}`;
}

/** A setup's letter in tables and pictures: A, B, C, and after Z by number. */
export function letterOf(index: number): string {
  return index < 26 ? String.fromCharCode(65 + index) : String(index + 1);
}

/** A paragraph that begins with a setup's letter: how to wrap it. */
export const lettered = (index: number): { first: string; hang: number } => ({
  first: `${letterOf(index)}  `,
  hang: 3,
});
