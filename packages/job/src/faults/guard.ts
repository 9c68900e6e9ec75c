import type { Found, Keys } from "./fault.ts";
import { show } from "./show.ts";

const DEEPEST = 16;
const WIDEST = 1000;
const LONGEST = 20_000;
/** Values in all. A job of 300 loads, each with a dozen uses, has some 15 000. */
const MOST = 60_000;

/**
 * What no job holds anywhere: nesting, lists, objects and texts past any job's. Checked first, so that the schema only
 * ever sees a value small enough to be looked at whole.
 */
export function guard(value: unknown): Found[] {
  const found: Found[] = [];
  const count = { left: MOST };
  walk(value, [], found, count);
  return count.left < 0 ? [...found, tooMany] : found;
}

function walk(value: unknown, keys: Keys, found: Found[], count: { left: number }): void {
  count.left -= 1;
  if (count.left < 0) return;
  if (typeof value === "string" && value.length > LONGEST) found.push(tooLong(keys, value));
  if (typeof value !== "object" || value === null) return;
  const names = Object.keys(value);
  const fault =
    keys.length > DEEPEST ? tooDeep(keys) : names.length > WIDEST ? tooWide(keys, value, names.length) : null;
  if (fault !== null) {
    found.push(fault);
    return;
  }
  for (const name of names) {
    walk((value as Record<string, unknown>)[name], [...keys, Array.isArray(value) ? Number(name) : name], found, count);
  }
}

const tooLong = (keys: Keys, value: string): Found => ({
  keys,
  given: show(value),
  accepted: `text of at most ${LONGEST} characters`,
});

const tooDeep = (keys: Keys): Found => ({ keys, given: "a value inside it", accepted: `at most ${DEEPEST} levels` });

const tooWide = (keys: Keys, value: object, size: number): Found => ({
  keys,
  given: Array.isArray(value) ? `a list of ${size}` : `an object of ${size} fields`,
  accepted: `at most ${WIDEST} entries`,
});

const tooMany: Found = { keys: [], given: "a larger one", accepted: `a job of at most ${MOST} values in all` };
