import type * as z from "zod";
import { nearName } from "./nearName.ts";

type Issue = z.core.$ZodIssue;
/** What is wrong with a value when it is held against one shape of a union. */
export type Branch = readonly Issue[];

/** The faults of the shape that comes nearest; null where two come equally near, for then neither was clearly meant. */
export function nearestBranch(branches: readonly Branch[]): Branch | null {
  const ranked = branches.map((errors) => ({ errors, far: distance(errors) })).sort((a, b) => a.far - b.far);
  const [best, next] = ranked;
  if (best === undefined || (next !== undefined && next.far === best.far)) return null;
  return best.errors;
}

/** How far a value is from one shape of a union: an unknown field that resembles a known one counts half. */
function distance(errors: Branch): number {
  return errors.reduce((sum, issue) => sum + (issue.code === "unrecognized_keys" ? strangeness(issue) : 2), 0);
}

function strangeness(issue: z.core.$ZodIssueUnrecognizedKeys): number {
  const known = knownBy(issue);
  return issue.keys.reduce((sum, key) => sum + (nearName(key, known) === null ? 4 : 1), 0);
}

/** The fields that a shape has, from its message. */
export const knownBy = ({ message }: z.core.$ZodIssueUnrecognizedKeys): string[] => message.split(", ");

/** The issue of a shape about fields of the value itself that it does not know. */
const ownUnknown = (errors: Branch): z.core.$ZodIssueUnrecognizedKeys | undefined =>
  errors.find((issue) => issue.code === "unrecognized_keys" && issue.path.length === 0) as
    z.core.$ZodIssueUnrecognizedKeys | undefined;

/** Fields that no shape of a union knows, and those that some shape does. */
export function unknownToAll(branches: readonly Branch[]): { strangers: string[]; known: string[] } {
  const issues = branches.map(ownUnknown);
  const [first, ...rest] = issues;
  const strangers = (first?.keys ?? []).filter((key) => rest.every((issue) => issue?.keys.includes(key) === true));
  const known = issues.flatMap((issue) => (issue === undefined ? [] : knownBy(issue)));
  return { strangers, known: [...new Set(known)] };
}

/** For each shape that knows every field given but those of `strangers`, the fields that it still lacks; fewest first. */
export function lacking(branches: readonly Branch[], strangers: readonly string[], given: object): string[][] {
  return branches
    .filter((errors) => (ownUnknown(errors)?.keys ?? []).every((key) => strangers.includes(key)))
    .map((errors) =>
      errors.flatMap(({ path }) => (path.length === 1 && !Object.hasOwn(given, path[0]!) ? [String(path[0])] : [])),
    )
    .filter((names) => names.length > 0)
    .sort((a, b) => a.length - b.length);
}
