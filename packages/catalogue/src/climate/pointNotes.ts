import type { Place } from "../places/place.ts";
import { countryName } from "../places/countries.ts";

/** What climateAt found and assumed for a point. */
export interface PointFacts {
  readonly station_km: number;
  /** the height that was taken, null where it was given [m] */
  readonly assumedElev_m: number | null;
  readonly assumedClock: { readonly utcOffset_h: number; readonly from: string } | null;
  readonly nearestPlace: { readonly place: Place; readonly distance_km: number };
}

/** Chosen: stations stand about 100 km apart where they are common. */
const distances_km = { roughTemperature: 150, doubtfulTemperature: 400, sameCoast: 100 } as const;

/** How good the climate of an unnamed point is and what was assumed, in plain words. */
export function pointNotes(facts: PointFacts): string[] {
  const { assumedElev_m, assumedClock } = facts;
  const notes = [sunNote(facts), temperatureNote(facts)];
  if (assumedElev_m !== null)
    notes.push(
      `Height taken as that of the nearest weather station, ${assumedElev_m} m; give the height where it differs.`,
    );
  if (assumedClock !== null)
    notes.push(
      `Clock taken as ${utc(assumedClock.utcOffset_h)}, ${assumedClock.from}; give its lead on UTC where it differs.`,
    );
  return notes;
}

function sunNote({ nearestPlace: { place, distance_km } }: PointFacts): string {
  if (place.radiationFlag === "check" && distance_km <= distances_km.sameCoast)
    return `Sunshine is doubtful round ${place.name}: satellite figures run too high on cloudy or mountainous coasts, by up to a quarter. Plan with a margin.`;
  return "Sunshine from satellite, 1983 to 2005: a year's mean is usually within 5 %; 3 to 6 % low in clear deserts, up to 26 % too high on cloudy or mountainous coasts.";
}

function temperatureNote({ station_km, nearestPlace: { place, distance_km } }: PointFacts): string {
  const away = `the nearest weather station is ${Math.round(station_km)} km away`;
  if (station_km <= distances_km.roughTemperature)
    return `Temperatures from stations around (${away}): usually within 2 °C, weaker on foggy coasts and in cold basins.`;
  if (distance_km < station_km)
    return `Temperatures are rough: ${away}. ${place.name}, ${countryName(place.country)} (id ${place.id}), is nearer, ${Math.round(distance_km)} km, and has its own.`;
  if (station_km <= distances_km.doubtfulTemperature)
    return `Temperatures are rough: ${away}. They may be several degrees out.`;
  return `Temperatures are doubtful: ${away}. Check the latitude and longitude: this may be open sea.`;
}

function utc(offset_h: number): string {
  const minutes = Math.round(Math.abs(offset_h) * 60);
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return `UTC${offset_h < 0 ? "−" : "+"}${clock}`;
}
