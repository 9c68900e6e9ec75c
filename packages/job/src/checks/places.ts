import { asFields, asList } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { part, parts, type Part } from "./read.ts";

/** In a climate given whole, each month's maximum is at least its minimum. */
export function placeFaults(job: unknown): Found[] {
  const places = [part(job, "place"), ...parts(job, "match").map(({ keys }) => part(job, ...keys, "place"))];
  return places.flatMap((place) => (place === null ? [] : crossed(place)));
}

function crossed({ keys, fields }: Part): Found[] {
  const { tmax_C, tmin_C } = asFields(fields);
  const tmax = asList(tmax_C);
  return asList(tmin_C).flatMap((low, i) => {
    const high = tmax[i];
    if (typeof low !== "number" || typeof high !== "number" || !(low > high)) return [];
    return [{ keys: [...keys, "tmin_C", i], given: `${low}`, accepted: `at most that month's maximum, ${high} °C` }];
  });
}
