import { nearestStations, stations, temperatureFrom, type Station } from "@stayput/catalogue/grid";
import { describe, expect, it } from "vitest";

const months = (value: number) => Array<number>(12).fill(value);
const station = (elev_m: number, max_C: number, min_C: number): Station => {
  return { latitude_deg: 0, longitude_deg: 0, elev_m, tmax_C: months(max_C), tmin_C: months(min_C) };
};

describe("temperatureFrom", () => {
  it("takes one station at its height, and falls 5.5 °C for each kilometre above it", () => {
    const near = [{ station: station(400, 30, 12), distance_km: 40 }];
    expect(temperatureFrom(near, 400)).toEqual({ tmax_C: months(30), tmin_C: months(12) });
    expect(temperatureFrom(near, 1400).tmax_C[0]).toBeCloseTo(24.5, 12);
    expect(temperatureFrom(near, 1400).tmin_C[11]).toBeCloseTo(6.5, 12);
  });

  it("weighs two by distance and height, as worked by hand", () => {
    // at 0 m: A at 5 km and 0 m, w = 1/(5+5)² = 0.01; B at 15 km and 100 m, √(15² + 20²) = 25, w = 1/(25+5)² = 1/900
    const near = [
      { station: station(0, 20, 10), distance_km: 5 },
      { station: station(100, 30, 0), distance_km: 15 },
    ];
    const [a, b] = [0.01, 1 / 900];
    const { tmax_C, tmin_C } = temperatureFrom(near, 0);
    expect(tmax_C[5]).toBeCloseTo((a * 20 + b * 30.55) / (a + b), 12);
    expect(tmin_C[5]).toBeCloseTo((a * 10 + b * 0.55) / (a + b), 12);
  });
});

describe("nearestStations", () => {
  it("are the nearest of all, nearest first", () => {
    const near = nearestStations(-28.4, 21.27, 8);
    const distances = near.map(({ distance_km }) => distance_km);
    expect(near).toHaveLength(8);
    expect(distances).toEqual(distances.toSorted((a, b) => a - b));
    const others = stations().filter((one) => !near.some((n) => n.station === one));
    expect(nearestStations(-28.4, 21.27, 9)[8]!.station).toBe(others.reduce((a, b) => (away(a) <= away(b) ? a : b)));
  });

  /** Chord through the earth: rises with distance, and is worked out another way than the product does. */
  function away({ latitude_deg, longitude_deg }: Station): number {
    const at = (lat: number, lon: number) => {
      const [f, l] = [(lat * Math.PI) / 180, (lon * Math.PI) / 180];
      return [Math.cos(f) * Math.cos(l), Math.cos(f) * Math.sin(l), Math.sin(f)] as const;
    };
    const [a, b] = [at(latitude_deg, longitude_deg), at(-28.4, 21.27)];
    return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  }
});

describe("stations", () => {
  it("are the 2,828 with both maxima and minima, maxima never under minima", () => {
    expect(stations()).toHaveLength(2828);
    for (const { tmax_C, tmin_C, latitude_deg, elev_m } of stations()) {
      tmax_C.forEach((max, month) => expect(max).toBeGreaterThan(tmin_C[month]!));
      expect(Math.abs(latitude_deg)).toBeLessThan(72);
      expect(elev_m).toBeGreaterThan(-451);
    }
  });
});
