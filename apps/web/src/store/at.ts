export type Keys = readonly (string | number)[];

/** A path as the job parser writes it in its faults: ["setups", 0, "bank"] is `setups[0].bank`. */
export const pathText = (keys: Keys): string =>
  keys.reduce<string>((text, key) => {
    if (typeof key === "number") return `${text}[${key}]`;
    return text === "" ? key : `${text}.${key}`;
  }, "");

/** What stands at a path of plain data; undefined where there is nothing. */
export function getAt(value: unknown, keys: Keys): unknown {
  return keys.reduce<unknown>((here, key) => {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, key)) return undefined;
    return (here as Record<string | number, unknown>)[key];
  }, value);
}

/** A copy with one value set; undefined takes the field out, so that its default holds again. */
export function setAt<T>(value: T, keys: Keys, to: unknown): T {
  const [key, ...rest] = keys;
  if (key === undefined) return to as T;
  if (typeof key === "number") {
    const list = Array.isArray(value) ? (value as unknown[]) : [];
    const copy = [...list];
    copy[key] = setAt(list[key], rest, to);
    return copy as T;
  }
  const fields = typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  const next = setAt(fields[key], rest, to);
  const { [key]: _, ...others } = fields;
  // an existing field keeps its place, so that a saved file reads the same
  if (next === undefined) return others as T;
  return (key in fields ? { ...fields, [key]: next } : { ...others, [key]: next }) as T;
}

/** A copy with one entry of a list taken out. */
export const removeAt = <T>(value: T, keys: Keys, index: number): T => {
  const list = getAt(value, keys);
  return Array.isArray(list)
    ? setAt(
        value,
        keys,
        list.filter((_, i) => i !== index),
      )
    : value;
};

/** A copy with an entry put into a list, at its end unless an index is given. */
export function insertAt<T>(value: T, keys: Keys, entry: unknown, index?: number): T {
  const list = getAt(value, keys);
  const entries: unknown[] = Array.isArray(list) ? [...(list as unknown[])] : [];
  entries.splice(index ?? entries.length, 0, entry);
  return setAt(value, keys, entries);
}
