import { tripDefaults } from "../defaults.ts";
import type { Found } from "../faults/fault.ts";
import { crumbless } from "../quantities/number.ts";
import { num, part, parts, type Part } from "./read.ts";

/** A window is of some length: midnight to midnight is 0 to 24. */
export function emptyWindow({ keys, fields }: Part): Found[] {
  const from = num(fields, "from");
  if (!(from === num(fields, "to") || (from === 24 && num(fields, "to") === 0))) return [];
  const accepted = "an hour other than `from`; all day is 0 to 24";
  return [{ keys: [...keys, "to"], given: String(fields["to"]), accepted, restsOn: [[...keys, "from"]] }];
}

/** Shade windows have a length, and a drive ends on the day it begins. */
export function tripFaults(job: unknown): Found[] {
  const drives = part(job, "trip", "drives");
  return [...parts(job, "trip", "shade").flatMap(emptyWindow), ...(drives === null ? [] : pastMidnight(drives))];
}

function pastMidnight({ keys, fields }: Part): Found[] {
  const hours = num(fields, "hours");
  const departs = "departs" in fields ? num(fields, "departs") : tripDefaults.departs;
  const most = crumbless(24 - departs);
  if (!(hours > most)) return [];
  const accepted = `at most ${most} h when leaving at ${departs}: a drive ends by midnight`;
  return [{ keys: [...keys, "hours"], given: `${hours}`, accepted, restsOn: [[...keys, "departs"]] }];
}
