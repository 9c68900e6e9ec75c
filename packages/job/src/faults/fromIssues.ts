import type * as z from "zod";
import { forbiddenNames } from "../schema/leaf.ts";
import { asFields, at } from "./at.ts";
import { lacking, nearestBranch, unknownToAll } from "./branches.ts";
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
  if (issue.code === "invalid_union") return fromUnion(issue, keys, root);
  return [wrongValue(keys, acceptedBy(issue), root)];
}

/** The faults of the shape that was meant; where that is not clear, the fields that no shape knows, and what is missing. */
function fromUnion(issue: z.core.$ZodIssueInvalidUnion, keys: Keys, root: unknown): Found[] {
  const { strangers, known } = unknownToAll(issue.errors);
  const branch = nearestBranch(issue.errors);
  if (branch !== null) return branch.flatMap((each) => fromBranch(each, strangers, issue, keys, root));
  const unknown = strangers.map((key) => unknownField(key, keys, known.join(", "), root));
  return [...unknown, noForm(issue, strangers, keys, root)];
}

/** As any issue, but a field that another shape of the union has is told not to go with the rest, and is not respelt. */
function fromBranch(
  issue: Issue,
  strangers: readonly string[],
  union: z.core.$ZodIssueInvalidUnion,
  keys: Keys,
  root: unknown,
): Found[] {
  if (issue.code !== "unrecognized_keys" || issue.path.length > 0) return fromIssue(issue, root, keys);
  return issue.keys.map((key) =>
    strangers.includes(key) ? unknownField(key, keys, issue.message, root) : misfit(key, issue, union, keys, root),
  );
}

function misfit(
  key: string,
  issue: z.core.$ZodIssueUnrecognizedKeys,
  union: z.core.$ZodIssueInvalidUnion,
  keys: Keys,
  root: unknown,
): Found {
  const fitting = Object.keys(asFields(at(root, keys))).filter((name) => !issue.keys.includes(name));
  const accepted = acceptedBy(union);
  const here = [...keys, key];
  const says = `${oneLine(key)} does not go with ${listed(fitting)}; accepted is ${accepted}`;
  return { keys: here, given: show(at(root, here)), accepted, says };
}

/** An object that could be several shapes of a union and is none: what it has, and what each would still need. */
function noForm(issue: z.core.$ZodIssueInvalidUnion, strangers: readonly string[], keys: Keys, root: unknown): Found {
  const fields = asFields(at(root, keys));
  const known = Object.keys(fields).filter((name) => !strangers.includes(name));
  if (known.length === 0) return wrongValue(keys, acceptedBy(issue), root);
  const ways = lacking(issue.errors, strangers, fields).map(listed);
  const given = `an object with ${listed(known)}`;
  const missing = ways.length === 0 ? "" : `; it lacks ${ways.join(", or ")}`;
  const accepted = acceptedBy(issue);
  return { keys, given, accepted, says: `${given} was given${missing}; accepted is ${accepted}` };
}

/** "a, b and c", at most as many as a shape has fields; other names may come from anywhere and have no end. */
function listed(names: readonly string[]): string {
  const few = names.slice(0, 12);
  return few.length < 2 ? few.join("") : `${few.slice(0, -1).join(", ")} and ${few.at(-1)!}`;
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
