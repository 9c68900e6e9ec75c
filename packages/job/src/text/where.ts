import { findNodeAtLocation, parseTree, printParseErrorCode, visit, type ParseError } from "jsonc-parser";
import type { Fault, Keys } from "../faults/fault.ts";
import { oneLine } from "../faults/show.ts";
import { pathText } from "../faults/pathText.ts";

/** Deepest nesting of brackets handed to the parsers, whose recursion would otherwise run out of stack. */
const DEEPEST = 200;
const MOST_TOLD = 20;
const strict = { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false };

/** Where a text stops being JSON: a fault with line and column; null where it is JSON throughout. */
export function brokenAt(text: string): Fault | null {
  const deep = tooDeepAt(text);
  if (deep !== null) return at(text, deep, `brackets nest deeper than ${DEEPEST}`);
  try {
    JSON.parse(text);
    return null;
  } catch {
    const errors: ParseError[] = [];
    parseTree(text, errors, strict);
    const first = errors[0];
    return at(text, first?.offset ?? text.length, reason(text, first));
  }
}

function reason(text: string, error: ParseError | undefined): string {
  if (error === undefined) return cutOff;
  const name = printParseErrorCode(error.error);
  if (name === "EndOfFileExpected") return surplus(text.charAt(error.offset));
  const unended = name.startsWith("UnexpectedEnd");
  const reached = error.offset + (unended ? error.length : 0);
  if (reached >= text.trimEnd().length) return cutOff;
  if (name === "UnexpectedEndOfString") return "the text that begins here has no closing quote on its line";
  return `${name.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase()} at ${oneLine(text.slice(error.offset, error.offset + 20))}`;
}

const cutOff = "the text ends too early; it looks cut off";

/** What stands after the one value that there is to be. */
const surplus = (first: string): string =>
  /[}\],:]/.test(first)
    ? `the job has ended before this ${oneLine(first)}`
    : "a second value begins here; a file holds one job";

function at(text: string, offset: number, what: string): Fault {
  const { line, column } = placeOf(text, offset);
  const message = `not readable as JSON: line ${line}, column ${column}: ${what}`;
  return { path: "", given: oneLine(text.slice(offset, offset + 20)), accepted: "JSON", message, line };
}

/** Line and column, from 1, of an offset in a text. */
function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  return { line: before.split("\n").length, column: offset - before.lastIndexOf("\n") };
}

function tooDeepAt(text: string): number | null {
  let depth = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (quoted) {
      if (c === BACKSLASH) i++;
      else if (c === QUOTE) quoted = false;
    } else if (c === QUOTE) quoted = true;
    else if (c === OPEN_LIST || c === OPEN_OBJECT) {
      if (++depth > DEEPEST) return i;
    } else if (c === CLOSE_LIST || c === CLOSE_OBJECT) depth--;
  }
  return null;
}

const [QUOTE, BACKSLASH, OPEN_LIST, CLOSE_LIST, OPEN_OBJECT, CLOSE_OBJECT] = [34, 92, 91, 93, 123, 125];

/** Fields that stand twice in one object: JSON would silently keep the last. */
export function repeatedKeys(text: string): Fault[] {
  const open: Set<string>[] = [];
  const faults: Fault[] = [];
  visit(text, {
    onObjectBegin: () => void open.push(new Set()),
    onObjectEnd: () => void open.pop(),
    onObjectProperty: (name, _offset, _length, line, _column, path) => {
      const seen = open.at(-1);
      if (seen?.has(name) === true && faults.length < MOST_TOLD)
        faults.push(repeated([...path(), name], name, line + 1));
      seen?.add(name);
    },
  });
  return faults;
}

function repeated(keys: Keys, name: string, line: number): Fault {
  const path = pathText(keys);
  const message = `${path}: the field ${oneLine(name)} stands twice in one object`;
  return { path, given: "a second time", accepted: "each field once", message, line };
}

/** Tells on which line a path stands; of a missing field, the line of what it is missing from. The text is read when first asked. */
export function lineFinder(text: string): (keys: Keys) => number | undefined {
  let root: ReturnType<typeof parseTree>;
  return (keys) => {
    root ??= parseTree(text, [], strict);
    if (root === undefined) return undefined;
    for (let n = keys.length; n >= 0; n--) {
      const node = findNodeAtLocation(root, [...keys.slice(0, n)]);
      if (node !== undefined)
        return placeOf(text, node.parent?.type === "property" ? node.parent.offset : node.offset).line;
    }
    return undefined;
  };
}
