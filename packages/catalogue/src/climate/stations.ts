import { stationCount, stationsPacked } from "../data/stations.ts";
import { distance_km } from "./distance.ts";
import { unpackPlanes } from "./planes.ts";

/** A weather station's means over 2003-2021, by month, January first. */
export interface Station {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly elev_m: number;
  /** mean daily maximum and minimum air temperature [°C], 12 values each */
  readonly tmax_C: readonly number[];
  readonly tmin_C: readonly number[];
}

/** A station and how far off it lies. */
export interface StationNear {
  readonly station: Station;
  readonly distance_km: number;
}

/**
 * How the station table is held: whole hundredths of a degree, metres and tenths of a degree Celsius, in five planes of
 * one row a station: latitude, longitude, height, maxima, and maxima less minima.
 */
export const stationPlanes = { perDegree: 100, perC: 10, columns: [1, 1, 1, 12, 12] } as const;

let unpacked: readonly Station[] | null = null;

/** Every station that reports both maxima and minima, unpacked at first use. Data: DWD CLIMAT reports (see credits). */
export function stations(): readonly Station[] {
  if (unpacked) return unpacked;
  const shapes = stationPlanes.columns.map((columns) => ({ rows: stationCount, columns }));
  const [latitude, longitude, elev, max, range] = unpackPlanes(stationsPacked, shapes).map(({ values }) => values);
  const { perDegree, perC } = stationPlanes;
  const tenths = (from: Int32Array, at: number) => Array.from(from.subarray(12 * at, 12 * at + 12));
  unpacked = Array.from({ length: stationCount }, (_, at) => {
    const [maxima, ranges] = [tenths(max!, at), tenths(range!, at)];
    return {
      latitude_deg: latitude![at]! / perDegree,
      longitude_deg: longitude![at]! / perDegree,
      elev_m: elev![at]!,
      tmax_C: maxima.map((t) => t / perC),
      tmin_C: maxima.map((t, month) => (t - ranges[month]!) / perC),
    };
  });
  return unpacked;
}

/** The `count` stations nearest to a point, nearest first. */
export function nearestStations(latitude_deg: number, longitude_deg: number, count: number): StationNear[] {
  const near: StationNear[] = [];
  for (const station of stations()) {
    const away = distance_km(latitude_deg, longitude_deg, station.latitude_deg, station.longitude_deg);
    if (near.length === count && !(away < near.at(-1)!.distance_km)) continue;
    const place = near.findIndex((other) => away < other.distance_km);
    near.splice(place < 0 ? near.length : place, 0, { station, distance_km: away });
    if (near.length > count) near.pop();
  }
  return near;
}
