import { usualSource_V } from "../defaults.ts";
import { at } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { nominalOf_V } from "./banks.ts";
import { lessThan } from "./loads.ts";
import { num, part, parts, type Part } from "./read.ts";

/** A source's low volts are under its volts, and an inverter's surge is no less than its rating. */
export function feedFaults(job: unknown): Found[] {
  return parts(job, "setups").flatMap(({ keys }) => {
    const source = part(job, ...keys, "feed", "source");
    const usual_V = usualSource_V(at(job, [...keys, "feed", "kind"]), nominalOf_V(part(job, ...keys, "bank")));
    const inverter = part(job, ...keys, "inverter");
    return [
      ...(source === null ? [] : lowAboveHigh(source, usual_V)),
      ...(inverter === null
        ? []
        : lessThan(inverter.keys, inverter.fields, "surge_W", "rated_W", "at least the rating")),
    ];
  });
}

function lowAboveHigh({ keys, fields }: Part, usual_V: number): Found[] {
  const volts = typeof fields["volts"] === "number" ? fields["volts"] : usual_V;
  if (!(num(fields, "low_V") > volts)) return [];
  return [{ keys: [...keys, "low_V"], given: `${num(fields, "low_V")}`, accepted: `at most volts, ${volts}, or null` }];
}
