import type * as z from "zod";
import { forbiddenNames } from "../schema/leaf.ts";
import { at } from "./at.ts";
import type { Found, Keys } from "./fault.ts";
import { nearName } from "./nearName.ts";
import { oneLine, show } from "./show.ts";

type Issue = z.core.$ZodIssue;

/** zod's issues as faults, every one, with what was given and what is accepted. The schema's messages are the latter. */
export function fromIssues(issues: readonly Issue[], root: unknown, before: Keys = []): Found[] {
  return issues.flatMap((issue) => fromIssue(issue, root, before));
}

function fromIssue(issue: Issue, root: unknown, before: Keys): Found[] {
  const keys = [...before, ...issue.path.map((key) => (typeof key === "symbol" ? String(key) : key))];
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownField(key, keys, issue.message, root));
  const branch = issue.code === "invalid_union" ? nearestBranch(issue.errors) : null;
  if (branch !== null) return fromIssues(branch, root, keys);
  return [wrongValue(keys, acceptedBy(issue), root)];
}

/** A kind that is none of the kinds is the one case in which zod knows better than the schema's message. */
function acceptedBy(issue: Issue): string {
  const kinds: unknown = "options" in issue ? issue.options : undefined;
  return Array.isArray(kinds) ? kinds.map(quoted).join(" or ") : issue.message;
}

const quoted = (value: unknown): string => JSON.stringify(value);

function wrongValue(keys: Keys, accepted: string, root: unknown): Found {
  const given = at(root, keys);
  return {
    keys,
    given: show(given),
    accepted,
    ...(given === undefined && keys.length > 0 ? { says: `missing; it must be ${accepted}` } : {}),
  };
}

function unknownField(key: string, keys: Keys, known: string, root: unknown): Found {
  const near = forbiddenNames.includes(key) ? null : nearName(key, known.split(", "));
  const hint = near === null ? `known here: ${known}` : `did you mean ${near}?`;
  return {
    keys: [...keys, key],
    given: show(at(root, [...keys, key])),
    accepted: near ?? known,
    says: `unknown field ${oneLine(key)}; ${hint}`,
  };
}

/** How far a value is from one shape of a union: an unknown field that resembles a known one counts half. */
function distance(errors: readonly Issue[]): number {
  return errors.reduce((sum, issue) => sum + (issue.code === "unrecognized_keys" ? strangeness(issue) : 2), 0);
}

function strangeness(issue: z.core.$ZodIssueUnrecognizedKeys): number {
  const known = issue.message.split(", ");
  return issue.keys.reduce((sum, key) => sum + (nearName(key, known) === null ? 4 : 1), 0);
}

/** The faults of the shape that comes nearest; null where two come equally near, for then neither was clearly meant. */
function nearestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | null {
  const ranked = branches.map((errors) => ({ errors, far: distance(errors) })).sort((a, b) => a.far - b.far);
  const [best, next] = ranked;
  if (best === undefined || (next !== undefined && next.far === best.far)) return null;
  return best.errors;
}
