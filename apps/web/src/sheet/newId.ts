/** A short name that none of the others has: "lights", then "lights-2". */
export function newId(stem: string, taken: readonly string[]): string {
  const plain =
    stem
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-+|-+$/g, "")
      .slice(0, 30)
      .replace(/-+$/, "") || "item";
  const refused = new Set([...taken, "inverter", "constructor", "prototype"]);
  for (let i = 1; ; i++) {
    const id = i === 1 ? plain : `${plain}-${i}`;
    if (!refused.has(id)) return id;
  }
}
