import { loadDefaults } from "../defaults.ts";
import { asFields } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { crumbless } from "../quantities/number.ts";
import { everyLoad, num, parts, type Part } from "./read.ts";
import { emptyWindow } from "./trip.ts";

/** What the fields of one load ask of each other. */
export function loadFaults(job: unknown): Found[] {
  return everyLoad(job).flatMap((load) => {
    if (load.fields["kind"] === "appliance") return applianceFaults(job, load);
    if (load.fields["kind"] === "compressor-fridge") return compressorFaults(load);
    return load.fields["kind"] === "absorption-fridge" ? absorptionFaults(load) : [];
  });
}

function applianceFaults(job: unknown, { keys, fields }: Part): Found[] {
  const outside = fields["outside"];
  const idle = typeof outside === "object" && outside !== null && Object.keys(outside).length === 0;
  const { above_C, below_C } = asFields(outside);
  const never = typeof above_C === "number" && typeof below_C === "number" && !(above_C < below_C);
  return [
    ...parts(job, ...keys, "use").flatMap(emptyWindow),
    ...(idle ? [{ keys: [...keys, "outside"], given: "neither", accepted: "above_C or below_C, or both" }] : []),
    ...(never
      ? [
          {
            keys: [...keys, "outside", "above_C"],
            given: `${above_C}`,
            accepted: `under below_C, ${below_C}`,
            restsOn: [[...keys, "outside", "below_C"]],
          },
        ]
      : []),
    ...lessThan(keys, fields, "surge_W", "watts", "at least the running watts"),
  ];
}

function compressorFaults({ keys, fields }: Part): Found[] {
  const inside_C = "inside_C" in fields ? num(fields, "inside_C") : loadDefaults.inside_C;
  const ratedAt_C = "ratedAt_C" in fields ? num(fields, "ratedAt_C") : loadDefaults.ratedAt_C;
  const most = crumbless(num(fields, "compressor_W") * 24);
  const tooCool = !(ratedAt_C - inside_C >= 5) && !Number.isNaN(ratedAt_C - inside_C);
  return [
    ...(tooCool
      ? [
          {
            keys: [...keys, "ratedAt_C"],
            given: `${ratedAt_C}`,
            accepted: `at least 5 °C above inside_C, ${inside_C}`,
            restsOn: [[...keys, "inside_C"]],
          },
        ]
      : []),
    ...(num(fields, "rated_Wh_day") > most
      ? [
          {
            keys: [...keys, "rated_Wh_day"],
            given: `${num(fields, "rated_Wh_day")}`,
            accepted: `at most ${most} Wh a day, the compressor running without a stop`,
            restsOn: [[...keys, "compressor_W"]],
          },
        ]
      : []),
  ];
}

/** What it burns when camped must be there. */
function absorptionFaults({ keys, fields }: Part): Found[] {
  const element = { dc: "element_dc_W", ac: "element_ac_W" }[String(fields["burns"])];
  if (element === undefined || fields[element] !== 0) return [];
  return [
    { keys: [...keys, element], given: "0", accepted: `more than 0 W, since burns is "${String(fields["burns"])}"` },
  ];
}

/** A field that must not be under another. */
export function lessThan(
  keys: Part["keys"],
  fields: Part["fields"],
  key: string,
  least: string,
  accepted: string,
): Found[] {
  if (!(num(fields, key) < num(fields, least))) return [];
  return [
    {
      keys: [...keys, key],
      given: `${num(fields, key)}`,
      accepted: `${accepted}, ${num(fields, least)}`,
      restsOn: [[...keys, least]],
    },
  ];
}
