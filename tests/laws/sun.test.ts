import fc from "fast-check";
import { expect, it } from "vitest";
import {
  declination_deg,
  earthSunFactor,
  irradiate,
  planeGeometry,
  seriesDay,
} from "../../packages/sim/src/sun/index.ts";

const tenths = (low: number, high: number) => fc.integer({ min: 10 * low, max: 10 * high }).map((n) => n / 10);
const latitude = tenths(-60, 72);
const day = fc.integer({ min: 1, max: 365 });
const clearness = fc.integer({ min: 5, max: 84 }).map((n) => n / 100);
const tilt = fc.integer({ min: 0, max: 90 });
const azimuth = fc.integer({ min: 0, max: 359 });
/** A clock of its own, or none. Standard time leads or lags the sun by up to three hours somewhere. */
const clock = fc.oneof(
  fc.constant({ longitude_deg: null, utcOffset_h: null }),
  fc.record({ longitude_deg: tenths(-180, 180), lag_h: fc.integer({ min: -12, max: 12 }) }).map((place) => ({
    longitude_deg: place.longitude_deg,
    utcOffset_h: Math.max(-14, Math.min(14, Math.round(place.longitude_deg / 15) + place.lag_h / 4)),
  })),
);
const place = fc.tuple(latitude, clock).map(([latitude_deg, time]) => ({ latitude_deg, ...time }));

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
function hours(plane: ReturnType<typeof planeGeometry>, k: number): Float64Array {
  const out = new Float64Array(plane.days * 24);
  irradiate(plane, new Float64Array(plane.days).fill(k), out);
  return out;
}

it("a day's hours sum to the day", () => {
  fc.assert(
    fc.property(place, day, clearness, (where, first, k) => {
      const plane = planeGeometry(where, first, 1, 0, 0);
      const h0 = plane.h0_Wh_m2[0] ?? NaN;
      expect(Math.abs(sum(hours(plane, k)) - k * h0)).toBeLessThanOrEqual(1e-9 * (1 + h0));
      expect(Math.abs(sum(plane.i0_Wh_m2) - h0)).toBeLessThanOrEqual(1e-9 * (1 + h0));
      for (const shares of [plane.share_total, plane.share_diffuse]) {
        expect(sum(shares)).toBeCloseTo(h0 > 0 ? 1 : 0, 12);
      }
    }),
  );
});

it("every hour is finite and never negative, polar night and midnight sun included", () => {
  fc.assert(
    fc.property(place, day, clearness, tilt, azimuth, (where, first, k, tilt_deg, azimuth_deg) => {
      const plane = planeGeometry(where, first, 2, tilt_deg, azimuth_deg);
      for (const poa of hours(plane, k)) expect(poa >= 0 && poa < 1500).toBe(true);
    }),
    { numRuns: 500 },
  );
});

it("holds so on every day of the year at the ends of the range and at the circles", () => {
  for (const latitude_deg of [-60, -23.4, 0, 23.4, 66.5, 67, 70, 72]) {
    const plane = planeGeometry({ latitude_deg, longitude_deg: 20, utcOffset_h: 2 }, 1, 365, 60, 180);
    const all = hours(plane, 0.6);
    expect(all.every((poa) => poa >= 0 && poa < 1500)).toBe(true);
    const dark = plane.sunset_rad.filter((sunset) => sunset === 0).length;
    const lit = plane.sunset_rad.filter((sunset) => sunset === Math.PI).length;
    expect(dark > 0 && lit > 0).toBe(latitude_deg >= 67);
  }
});

it("under the midnight sun no hour is dark, whatever the clock's lead on the sun", () => {
  fc.assert(
    fc.property(clock, fc.integer({ min: 160, max: 185 }), (time, first) => {
      const plane = planeGeometry({ latitude_deg: 70, ...time }, first, 1, 0, 0);
      expect(Math.min(...plane.i0_Wh_m2)).toBeGreaterThan(0);
      expect(Math.min(...hours(plane, 0.5).map((poa) => poa))).toBeGreaterThan(0);
    }),
  );
});

it("moving the clock moves the hours and changes nothing else", () => {
  fc.assert(
    fc.property(
      latitude,
      day,
      clearness,
      tilt,
      azimuth,
      fc.integer({ min: -5, max: 5 }),
      (lat, first, k, t, a, lead) => {
        const at = (utcOffset_h: number) =>
          hours(planeGeometry({ latitude_deg: lat, longitude_deg: 0, utcOffset_h }, first, 1, t, a), k);
        const [home, away] = [at(0), at(lead)];
        for (let h = 0; h < 24; h++) expect(away[(h + lead + 24) % 24]).toBeCloseTo(home[h] ?? NaN, 6);
      },
    ),
  );
});

it("a clearer sky never gives less on the horizontal, hour by hour", () => {
  fc.assert(
    fc.property(place, day, clearness, clearness, (where, first, k1, k2) => {
      const plane = planeGeometry(where, first, 1, 0, 0);
      const [dull, clear] = [hours(plane, Math.min(k1, k2)), hours(plane, Math.max(k1, k2))];
      expect(clear.every((poa, h) => poa >= (dull[h] ?? NaN))).toBe(true);
    }),
  );
});

it("a flat plane faces nowhere, and gets the horizontal total exactly", () => {
  fc.assert(
    fc.property(place, day, clearness, azimuth, (where, first, k, azimuth_deg) => {
      const plane = planeGeometry(where, first, 1, 0, azimuth_deg);
      const total = (h: number): number => k * (plane.h0_Wh_m2[0] ?? NaN) * (plane.share_total[h] ?? NaN);
      expect(Array.from(hours(plane, k))).toEqual(Array.from({ length: 24 }, (_, h) => total(h)));
    }),
  );
});

it("a plane all but flat gets all but the horizontal total", () => {
  fc.assert(
    fc.property(place, day, clearness, azimuth, (where, first, k, azimuth_deg) => {
      const [flat, near] = [0, 1e-6].map((t) => hours(planeGeometry(where, first, 1, t, azimuth_deg), k));
      flat?.forEach((poa, h) => expect(near?.[h]).toBeCloseTo(poa, 3));
    }),
  );
});

it("a plane turned as far east as west gives the day mirrored about solar noon", () => {
  fc.assert(
    fc.property(latitude, day, clearness, tilt, azimuth, (latitude_deg, first, k, tilt_deg, azimuth_deg) => {
      const bare = { latitude_deg, longitude_deg: null, utcOffset_h: null };
      const [one, other] = [azimuth_deg, 360 - azimuth_deg].map((a) =>
        hours(planeGeometry(bare, first, 1, tilt_deg, a), k),
      );
      one?.forEach((poa, h) => expect(other?.[23 - h]).toBeCloseTo(poa, 6));
    }),
  );
});

/** Half a year on, to within the few days by which the orbit makes half-years unequal: where the declination mirrors best. */
function mirrored(first: number): number {
  const about = Array.from({ length: 13 }, (_, i) => ((first + 176 + i - 1) % 365) + 1);
  const off = (n: number): number => Math.abs(declination_deg(seriesDay(n)) + declination_deg(seriesDay(first)));
  return about.reduce((best, n) => (off(n) < off(best) ? n : best));
}

it("the other hemisphere half a year on gives nearly the same, the sun's distance apart", () => {
  // declinations by whole days mirror to 0.2°, which is under 2 % of a plane at up to 60° within 45° of the equator
  fc.assert(
    fc.property(tenths(0, 45), day, clearness, fc.integer({ min: 0, max: 60 }), (lat, first, k, tilt_deg) => {
      const later = mirrored(first);
      const bare = { longitude_deg: null, utcOffset_h: null };
      const north = planeGeometry({ latitude_deg: lat, ...bare }, first, 1, tilt_deg, 180);
      const south = planeGeometry({ latitude_deg: -lat, ...bare }, later, 1, tilt_deg, 0);
      const a = sum(hours(north, k)) / earthSunFactor(seriesDay(first));
      const b = sum(hours(south, k)) / earthSunFactor(seriesDay(later));
      expect(Math.abs(a - b)).toBeLessThanOrEqual(0.02 * Math.max(a, b));
    }),
  );
});
