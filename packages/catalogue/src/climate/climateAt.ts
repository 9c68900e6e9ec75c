import type { Climate } from "@stayput/sim";
import { countryName } from "../places/countries.ts";
import { dayToDayDefault, type Place } from "../places/place.ts";
import { places } from "../places/places.ts";
import { distance_km } from "./distance.ts";
import { pointNotes } from "./pointNotes.ts";
import { radiationAt } from "./radiation.ts";
import { nearestStations } from "./stations.ts";
import { temperatureFrom } from "./temperature.ts";

/** Stations to take the temperature from. Source: shared/climate/SOURCES.md. */
const stationsUsed = 8;
/** Beyond this the nearest named place says nothing of the clock. Chosen: see utcOffsetAt. */
const clockReach_km = 800;

/** The climate of a point, and how good it is. */
export interface ClimateAt {
  readonly climate: Climate;
  /** how good it is and what was assumed, in plain words, to show with the answer */
  readonly notes: readonly string[];
  /** the height used [m] */
  readonly elev_m: number;
  /** distance of the nearest weather station */
  readonly station_km: number;
}

/**
 * The climate of any point from 60° S to 72° N: radiation from the grid, temperature from the eight nearest stations.
 * At sea it answers too, for want of a coastline, with a note of how far off the nearest station is.
 *
 * @param latitude_deg -60 to 72, north positive
 * @param longitude_deg -180 to 360, east positive
 * @param elev_m height, -450 to 6000; left out: the nearest station's
 * @param utcOffset_h standard time's lead on UTC, -12 to 14; left out: the nearest named place's, or by longitude
 * @throws RangeError that names the field, what was given and what is accepted
 */
export function climateAt(
  latitude_deg: number,
  longitude_deg: number,
  elev_m?: number,
  utcOffset_h?: number,
): ClimateAt {
  accept("latitude_deg", latitude_deg, -60, 72);
  accept("longitude_deg", longitude_deg, -180, 360);
  if (elev_m !== undefined) accept("elev_m", elev_m, -450, 6000);
  if (utcOffset_h !== undefined) accept("utcOffset_h", utcOffset_h, -12, 14);
  const east_deg = longitude_deg > 180 ? longitude_deg - 360 : longitude_deg;
  const near = nearestStations(latitude_deg, east_deg, stationsUsed);
  const height_m = elev_m ?? near[0]!.station.elev_m;
  const assumedClock = utcOffset_h === undefined ? utcOffsetAt(latitude_deg, east_deg) : null;
  const climate: Climate = {
    latitude_deg,
    longitude_deg: east_deg,
    utcOffset_h: assumedClock?.utcOffset_h ?? utcOffset_h!,
    ghi_kWh_m2_day: radiationAt(latitude_deg, east_deg),
    ...temperatureFrom(near, height_m),
    dayToDay: dayToDayDefault,
  };
  const notes = pointNotes({
    station_km: near[0]!.distance_km,
    assumedElev_m: elev_m === undefined ? height_m : null,
    assumedClock,
    nearestPlace: nearestPlaceTo(latitude_deg, east_deg),
  });
  return { climate, notes, elev_m: height_m, station_km: near[0]!.distance_km };
}

/**
 * Standard time where none is given: that of the nearest named place, or by longitude, one hour each 15°, where none is
 * within 800 km. Of the 298 places, each guessed from the others, 15 % come out wrong so, against 46 % by longitude.
 */
export function utcOffsetAt(latitude_deg: number, longitude_deg: number): { utcOffset_h: number; from: string } {
  const { place, distance_km } = nearestPlaceTo(latitude_deg, longitude_deg);
  if (distance_km <= clockReach_km)
    return { utcOffset_h: place.utcOffset_h, from: `as at ${place.name}, ${countryName(place.country)}` };
  return { utcOffset_h: Math.round(longitude_deg / 15) + 0, from: "by longitude" };
}

function nearestPlaceTo(latitude_deg: number, longitude_deg: number): { place: Place; distance_km: number } {
  const away = places.map((p) => distance_km(latitude_deg, longitude_deg, p.latitude_deg, p.longitude_deg));
  const least = Math.min(...away);
  return { place: places[away.indexOf(least)]!, distance_km: least };
}

function accept(field: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most)) throw new RangeError(`${field} must be ${least} to ${most}, got ${value}`);
}
