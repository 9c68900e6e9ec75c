import { climateAt, climateBySky, radiationAt } from "@stayput/catalogue/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const latitude = fc.integer({ min: -6000, max: 7200 }).map((hundredths) => hundredths / 100);
const longitude = fc.integer({ min: -18000, max: 18000 }).map((hundredths) => hundredths / 100);
const elev_m = fc.integer({ min: -400, max: 5000 });

/** Largest difference of two tables. */
const apart = (a: readonly number[], b: readonly number[]) => Math.max(...a.map((x, i) => Math.abs(x - b[i]!)));

describe("the climate of a point", () => {
  it("is finite and believable everywhere from 60° S to 72° N", () => {
    fc.assert(
      fc.property(latitude, longitude, elev_m, (lat, lon, elev) => {
        const { climate } = climateAt(lat, lon, elev);
        for (const ghi of climate.ghi_kWh_m2_day) expect(ghi >= 0 && ghi < 10).toBe(true);
        climate.tmax_C.forEach((max, month) => {
          expect(max > climate.tmin_C[month]!).toBe(true);
          expect(max < 60 && climate.tmin_C[month]! > -80).toBe(true);
        });
      }),
    );
  });

  it("is the same a turn of the earth on", () => {
    fc.assert(
      fc.property(latitude, fc.integer({ min: -18000, max: -1 }), (lat, hundredths) => {
        const [west, east] = [climateAt(lat, hundredths / 100), climateAt(lat, hundredths / 100 + 360)];
        expect(apart(west.climate.ghi_kWh_m2_day, east.climate.ghi_kWh_m2_day)).toBeLessThan(1e-9);
        expect(apart(west.climate.tmax_C, east.climate.tmax_C)).toBeLessThan(1e-9);
      }),
    );
  });

  it("has no step in its sunshine: a thousandth of a degree moves it by at most a thousandth of a cell's slope", () => {
    // neighbouring cells differ by under 3 kWh/m²/day anywhere, so over 0.002° by under 0.006, cell edge or not
    fc.assert(
      fc.property(
        fc.integer({ min: -119, max: 143 }),
        fc.integer({ min: -360, max: 360 }),
        fc.boolean(),
        (y, x, along) => {
          const [lat, lon, step] = [y / 2, x / 2, 0.001]; // half degrees are where cells and centres meet
          const before = along ? radiationAt(lat, lon - step) : radiationAt(lat - step, lon);
          const after = along ? radiationAt(lat, lon + step) : radiationAt(lat + step, lon);
          expect(apart(before, after)).toBeLessThan(0.006);
        },
      ),
    );
  });

  // the outermost half cells have corners outside the range
  const innerLatitude = fc.integer({ min: -5950, max: 7149 }).map((hundredths) => hundredths / 100);
  it("lies between the cells around it", () => {
    fc.assert(
      fc.property(innerLatitude, longitude, (lat, lon) => {
        const south = Math.floor(lat - 0.5) + 0.5;
        const corners = [
          ...[radiationAt(south, Math.floor(lon - 0.5) + 0.5), radiationAt(south, Math.floor(lon - 0.5) + 1.5)],
          ...[Math.floor(lon - 0.5) + 0.5, Math.floor(lon - 0.5) + 1.5].map((l) => radiationAt(south + 1, l)),
        ];
        radiationAt(lat, lon).forEach((ghi, month) => {
          const around = corners.map((corner) => corner[month]!);
          expect(ghi).toBeGreaterThanOrEqual(Math.min(...around) - 1e-9);
          expect(ghi).toBeLessThanOrEqual(Math.max(...around) + 1e-9);
        });
      }),
    );
  });
});

describe("the climate of a bare latitude", () => {
  it("has more sun under clearer skies, in every month that has any", () => {
    fc.assert(
      fc.property(latitude, (lat) => {
        const [clear, mixed, dull] = (["clear", "mixed", "dull"] as const).map((sky) => climateBySky(lat, sky).climate);
        clear!.ghi_kWh_m2_day.forEach((ghi, month) => {
          if (ghi === 0) return;
          expect(ghi).toBeGreaterThan(mixed!.ghi_kWh_m2_day[month]!);
          expect(mixed!.ghi_kWh_m2_day[month]!).toBeGreaterThan(dull!.ghi_kWh_m2_day[month]!);
        });
      }),
      { numRuns: 40 },
    );
  });
});
