import { usualIdle_W, usualSource_V } from "../defaults.ts";
import { at } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { nominalOf_V } from "./banks.ts";
import { lessThan } from "./loads.ts";
import { num, part, parts, type Part } from "./read.ts";

/** A source's low volts are under its volts, and an inverter's figures fit one another. */
export function feedFaults(job: unknown): Found[] {
  return parts(job, "setups").flatMap(({ keys }) => {
    const source = part(job, ...keys, "feed", "source");
    const usual_V = usualSource_V(at(job, [...keys, "feed", "kind"]), nominalOf_V(part(job, ...keys, "bank")));
    const inverter = part(job, ...keys, "inverter");
    return [
      ...(source === null ? [] : lowAboveHigh(source, usual_V)),
      ...(inverter === null ? [] : inverterFaults(inverter)),
    ];
  });
}

function lowAboveHigh({ keys, fields }: Part, usual_V: number): Found[] {
  const volts = typeof fields["volts"] === "number" ? fields["volts"] : usual_V;
  if (!(num(fields, "low_V") > volts)) return [];
  return [{ keys: [...keys, "low_V"], given: `${num(fields, "low_V")}`, accepted: `at most volts, ${volts}, or null` }];
}

/** No more is drawn idle than the rating, and what that draw alone loses leaves room for the best efficiency. */
function inverterFaults({ keys, fields }: Part): Found[] {
  const rated_W = num(fields, "rated_W");
  const idle_W = typeof fields["idle_W"] === "number" ? fields["idle_W"] : usualIdle_W(rated_W);
  const best = rated_W / (rated_W + idle_W);
  const given = (key: string, accepted: string): Found[] => [
    { keys: [...keys, key], given: `${num(fields, key)}`, accepted },
  ];
  return [
    ...lessThan(keys, fields, "surge_W", "rated_W", "at least the rating"),
    ...(idle_W > rated_W ? given("idle_W", `at most the rating, ${rated_W}`) : []),
    ...(num(fields, "peakEfficiency") > best
      ? given("peakEfficiency", `at most ${Math.floor(1000 * best) / 1000}, with ${idle_W} W drawn idle`)
      : []),
  ];
}
