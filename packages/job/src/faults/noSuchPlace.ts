import type { Found, Keys } from "./fault.ts";
import { oneLine, show } from "./show.ts";

/** The places nearest in spelling to an id that no place has, in words; null where one has it. */
export type NearestPlaces = (id: string) => readonly string[] | null;

/** How many are offered. */
const MOST = 5;

/** Looks ids up among the catalogue's places, which are loaded when they are first asked for. */
export async function loadNearestPlaces(): Promise<NearestPlaces> {
  const { findPlace, nearestNames } = await import("@stayput/catalogue/places");
  return (id) => (findPlace(id) === undefined ? nearestNames(id, MOST) : null);
}

/** An id that no place has, with those nearest. */
export const noSuchPlace = (keys: Keys, id: string, nearest: readonly string[]): Found => ({
  keys,
  given: show(id),
  accepted: "the id of a place of the catalogue",
  says: `there is no place ${oneLine(id)}; the nearest are ${nearest.join(", ")}`,
});
