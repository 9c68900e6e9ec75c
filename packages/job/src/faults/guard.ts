import * as z from "zod";
import { schemasAt } from "../schema/schemasAt.ts";
import type { Found, Keys } from "./fault.ts";
import { show } from "./show.ts";

const DEEPEST = 16;
const WIDEST = 1000;
/** Longer than any text of a job. */
const LONGEST = 20_000;
/** Values in all. A job of 300 loads, each with a dozen uses, has some 15 000. */
const MOST = 60_000;

/**
 * What no job holds anywhere: nesting, lists, objects and texts past any job's. Checked first, so that the schema only
 * ever sees a value small enough to be looked at whole; of a text that is too long it is asked what the field takes.
 */
export function guard(value: unknown, schema: z.core.$ZodType): Found[] {
  const found: Found[] = [];
  const count = { left: MOST };
  walk(value, [], found, count);
  const told = found.map((fault) => ({ ...fault, accepted: fault.accepted || longestAt(schema, fault.keys) }));
  return count.left < 0 ? [...told, tooMany] : told;
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

/** What is accepted is the field's to say, which `guard` looks up. */
const tooLong = (keys: Keys, value: string): Found => ({ keys, given: show(value), accepted: "" });

/** What a field says to a text just too long for any; of no field at all, the most that any takes. */
function longestAt(schema: z.core.$ZodType, keys: Keys): string {
  const [here] = schemasAt(schema, keys);
  const refused = here === undefined ? undefined : z.safeParse(here, "x".repeat(LONGEST + 1)).error;
  return refused?.issues[0]?.message ?? `text of at most ${LONGEST} characters`;
}

const tooDeep = (keys: Keys): Found => ({ keys, given: "a value inside it", accepted: `at most ${DEEPEST} levels` });

const tooWide = (keys: Keys, value: object, size: number): Found => ({
  keys,
  given: Array.isArray(value) ? `a list of ${size}` : `an object of ${size} fields`,
  accepted: `at most ${WIDEST} entries`,
});

const tooMany: Found = { keys: [], given: "a larger one", accepted: `a job of at most ${MOST} values in all` };
