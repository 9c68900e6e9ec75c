import type { Found } from "../faults/fault.ts";
import { parts, type Part } from "./read.ts";

const sizes = ["area_mm2", "awg", "autoSize_mm"] as const;

/** A cable has one size, in one of three ways of saying it. */
export function pathFaults(job: unknown): Found[] {
  return parts(job, "setups").flatMap(({ keys }) => {
    const paths = [[...keys, "feed"], ...parts(job, ...keys, "runs").map((run) => run.keys)];
    return paths.flatMap((path) => parts(job, ...path, "path").flatMap(cableSize));
  });
}

function cableSize({ keys, fields }: Part): Found[] {
  const given = sizes.filter((size) => size in fields);
  if (fields["kind"] !== "cable" || given.length === 1) return [];
  const accepted = `one of ${sizes.join(", ")}`;
  if (given.length === 0) return [{ keys, given: "no size", accepted }];
  const both = given.join(" and ");
  return [{ keys, given: both, accepted, says: `${both} were given; accepted is ${accepted}` }];
}
