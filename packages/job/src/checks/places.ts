import { asFields, asList } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { noSuchPlace, type NearestPlaces } from "../faults/noSuchPlace.ts";
import { namedPlace } from "../schema/place.ts";
import { part, parts, type Part } from "./read.ts";

/** In a climate given whole, each month's maximum is at least its minimum; a place by its id is one that there is. */
export function placeFaults(job: unknown, nearestPlaces?: NearestPlaces): Found[] {
  const places = [part(job, "place"), ...parts(job, "match").map(({ keys }) => part(job, ...keys, "place"))];
  return places.flatMap((place) => (place === null ? [] : [...crossed(place), ...unknown(place, nearestPlaces)]));
}

function unknown({ keys, fields }: Part, nearestPlaces?: NearestPlaces): Found[] {
  const id = namedPlace.shape.id.safeParse(fields["id"]);
  const nearest = id.success ? nearestPlaces?.(id.data) : null;
  return id.success && nearest ? [noSuchPlace([...keys, "id"], id.data, nearest)] : [];
}

function crossed({ keys, fields }: Part): Found[] {
  const { tmax_C, tmin_C } = asFields(fields);
  const tmax = asList(tmax_C);
  return asList(tmin_C).flatMap((low, i) => {
    const high = tmax[i];
    if (typeof low !== "number" || typeof high !== "number" || !(low > high)) return [];
    const accepted = `at most that month's maximum, ${high} °C`;
    return [{ keys: [...keys, "tmin_C", i], given: `${low}`, accepted, restsOn: [[...keys, "tmax_C", i]] }];
  });
}
