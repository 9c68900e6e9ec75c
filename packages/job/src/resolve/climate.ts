import type { Climate } from "@stayput/sim";
import { loadNearestPlaces } from "../faults/noSuchPlace.ts";
import type { PlaceInJob } from "../schema/place.ts";

/** A place as people know it. */
export interface PlaceFound {
  /** id in the catalogue; null for a point given by its coordinates */
  readonly id: string | null;
  readonly name: string;
  readonly latitude_deg: number;
  readonly longitude_deg: number | null;
}

/** A place with its climate, and how good that is. */
export interface ClimateFound {
  readonly place: PlaceFound;
  readonly climate: Climate;
  readonly notes: readonly string[];
}

/** The place is not in the catalogue. */
export interface NoSuchPlace {
  readonly id: string;
  /** those nearest in spelling, in words */
  readonly nearest: readonly string[];
}

type Whole = Extract<PlaceInJob, { ghi_kWh_m2_day: unknown }>;

/**
 * The climate of a job's place. The catalogue's places and its grid are loaded when they are first needed, so that a
 * page without them starts sooner.
 */
export async function findClimate(place: PlaceInJob): Promise<ClimateFound | NoSuchPlace> {
  if ("ghi_kWh_m2_day" in place) return wholeClimate(place);
  if ("id" in place) return namedClimate(place.id);
  const { name, latitude } = place;
  const grid = await import("@stayput/catalogue/grid");
  const found =
    "sky" in place
      ? grid.climateBySky(latitude, place.sky)
      : grid.climateAt(latitude, place.longitude, place.elev_m, place.utcOffset_h);
  return { place: { id: null, name, ...pointOf(found.climate) }, climate: found.climate, notes: found.notes };
}

async function namedClimate(id: string): Promise<ClimateFound | NoSuchPlace> {
  const { climateOf, findPlace, placeNotes } = await import("@stayput/catalogue/places");
  const place = findPlace(id);
  if (place === undefined) return { id, nearest: (await loadNearestPlaces())(id) ?? [] };
  const climate = climateOf(place);
  return { place: { id, name: place.name, ...pointOf(climate) }, climate, notes: placeNotes(place) };
}

function wholeClimate(place: Whole): ClimateFound {
  const { name, latitude, longitude, ghi_kWh_m2_day, tmax_C, tmin_C, dayToDay } = place;
  const clock =
    longitude === undefined
      ? { longitude_deg: null, utcOffset_h: null }
      : { longitude_deg: longitude, utcOffset_h: place.utcOffset_h ?? Math.round(longitude / 15) };
  const climate = { latitude_deg: latitude, ...clock, ghi_kWh_m2_day, tmax_C, tmin_C, dayToDay };
  return { place: { id: null, name, ...pointOf(climate) }, climate, notes: clockNotes(place, clock.utcOffset_h) };
}

function clockNotes({ longitude, utcOffset_h }: Whole, used_h: number | null): string[] {
  if (longitude === undefined) return ["No longitude is given, so clock time is taken as solar time."];
  return utcOffset_h === undefined ? [`Standard time is taken as ${used_h} h from UTC, by the longitude.`] : [];
}

const pointOf = ({ latitude_deg, longitude_deg }: Climate): Pick<PlaceFound, "latitude_deg" | "longitude_deg"> => ({
  latitude_deg,
  longitude_deg,
});
