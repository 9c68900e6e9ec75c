import { usualIdle_W, usualSource_V } from "../defaults.ts";
import { at } from "../faults/at.ts";
import type { Found, Keys } from "../faults/fault.ts";
import { nominalOf_V } from "./banks.ts";
import { lessThan } from "./loads.ts";
import { num, part, parts, type Part } from "./read.ts";

/** A source's low volts are under its volts, and an inverter's figures fit one another. */
export function feedFaults(job: unknown): Found[] {
  return parts(job, "setups").flatMap(({ keys }) => {
    const source = part(job, ...keys, "feed", "source");
    const usual = {
      volts_V: usualSource_V(at(job, [...keys, "feed", "kind"]), nominalOf_V(part(job, ...keys, "bank"))),
      restsOn: [
        [...keys, "feed", "kind"],
        [...keys, "bank", "nominal_V"],
      ],
    };
    const inverter = part(job, ...keys, "inverter");
    return [
      ...(source === null ? [] : lowAboveHigh(source, usual)),
      ...(inverter === null ? [] : inverterFaults(inverter)),
    ];
  });
}

/** @param usual volts where none are given, and the fields that they hang on */
function lowAboveHigh({ keys, fields }: Part, usual: { volts_V: number; restsOn: readonly Keys[] }): Found[] {
  const low_V = num(fields, "low_V");
  const given = typeof fields["volts"] === "number";
  const volts = given ? num(fields, "volts") : usual.volts_V;
  if (!(low_V > volts)) return [];
  const restsOn = [[...keys, "volts"], ...(given ? [] : usual.restsOn)];
  return [{ keys: [...keys, "low_V"], given: `${low_V}`, accepted: `at most volts, ${volts}, or null`, restsOn }];
}

/** No more is drawn idle than the rating, and what that draw alone loses leaves room for the best efficiency. */
function inverterFaults({ keys, fields }: Part): Found[] {
  const rated_W = num(fields, "rated_W");
  const idle_W = typeof fields["idle_W"] === "number" ? fields["idle_W"] : usualIdle_W(rated_W);
  const best = rated_W / (rated_W + idle_W);
  const restsOn = [
    [...keys, "rated_W"],
    [...keys, "idle_W"],
  ];
  const given = (key: string, accepted: string): Found[] => [
    { keys: [...keys, key], given: `${num(fields, key)}`, accepted, restsOn },
  ];
  return [
    ...lessThan(keys, fields, "surge_W", "rated_W", "at least the rating"),
    ...(idle_W > rated_W ? given("idle_W", `at most the rating, ${rated_W}`) : []),
    ...(num(fields, "peakEfficiency") > best
      ? given("peakEfficiency", `at most ${Math.floor(1000 * best) / 1000}, with ${idle_W} W drawn idle`)
      : []),
  ];
}
