import { at } from "./at.ts";
import type { Fault, Found, Keys } from "./fault.ts";
import { pathText } from "./pathText.ts";

/** Most faults told: past this a file is not a job with slips in it. */
const MOST = 500;

/** Faults in the order of the file, each once, as sentences. `lineOf` tells the line of a path where there is a text. */
export function finish(found: readonly Found[], root: unknown, lineOf?: (keys: Keys) => number | undefined): Fault[] {
  const placed = found.map((fault) => ({ fault, order: orderIn(root, fault.keys) }));
  placed.sort((a, b) => compare(a.order, b.order));
  const faults = placed.slice(0, MOST).map(({ fault }) => sentence(fault, lineOf?.(fault.keys)));
  const each = [...new Map(faults.map((fault) => [fault.message, fault])).values()];
  return found.length > MOST ? [...each, more(found.length - MOST)] : each;
}

const more = (count: number): Fault => ({
  path: "",
  given: `${count} more faults`,
  accepted: "a job file",
  message: `and ${count} more faults`,
});

function sentence(found: Found, line: number | undefined): Fault {
  const path = pathText(found.keys);
  const says = found.says ?? `${found.given} was given; accepted is ${found.accepted}`;
  return {
    path,
    given: found.given,
    accepted: found.accepted,
    message: path === "" ? says : `${path}: ${says}`,
    ...(line === undefined ? {} : { line }),
  };
}

/** Where a path stands in a value: the position of each key among its neighbours. What is missing comes after what is there. */
function orderIn(root: unknown, keys: Keys): number[] {
  let here: unknown = root;
  return keys.map((key) => {
    const neighbours = typeof here === "object" && here !== null ? here : {};
    here = at(neighbours, [key]);
    if (typeof key === "number") return key;
    const index = Object.keys(neighbours).indexOf(key);
    return index < 0 ? Infinity : index;
  });
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    if (a[i] !== b[i]) return a[i]! < b[i]! ? -1 : 1;
  }
  return a.length - b.length;
}
