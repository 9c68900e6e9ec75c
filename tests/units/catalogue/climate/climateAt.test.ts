import { findPlace, places } from "@stayput/catalogue";
import { climateAt, radiationAt, utcOffsetAt } from "@stayput/catalogue/grid";
import { describe, expect, it } from "vitest";

describe("climateAt", () => {
  it("is the place's own sunshine at each named place", () => {
    // the places were taken from the same grid by the same recipe: what is left is the grid's rounding, at most 2.9 % of
    // 0.2 and 0.6 % of 5 kWh/m²/day (half a level: √g/80), and the table's own two decimals
    for (const place of places) {
      const ghi = radiationAt(place.latitude_deg, place.longitude_deg);
      place.ghi_kWh_m2_day.forEach((own, month) => {
        const rounding = Math.sqrt(own) / 80 + 1 / 160 ** 2;
        expect(Math.abs(ghi[month]! - own), `${place.id} ${month + 1}`).toBeLessThanOrEqual(rounding + 0.0051);
      });
    }
  });

  it("is the place's own temperature where its station is one of ours", () => {
    // 5 km of distance is added to every station's, so neighbours keep a small say even at the station itself: 0.06 °C or
    // less at nine places in ten, most (1.07) where a town's old and new stations stand a kilometre apart
    const own = places.filter((p) => p.temperatureQuality === "obs" && p.temperatureYears >= 5);
    expect(own.length).toBeGreaterThan(280);
    for (const place of own) {
      const { climate } = climateAt(place.latitude_deg, place.longitude_deg, place.elev_m);
      for (const table of ["tmax_C", "tmin_C"] as const)
        place[table].forEach((t, month) => {
          expect(Math.abs(climate[table][month]! - t), `${place.id} ${month + 1}`).toBeLessThanOrEqual(1.1);
        });
    }
  });

  it("takes the height of the nearest station and the clock of the nearest place, and says so", () => {
    const { climate, notes, elev_m } = climateAt(-28.5, 21.2);
    expect(elev_m).toBe(findPlace("za-upington")!.elev_m);
    expect(climate.utcOffset_h).toBe(2);
    expect(notes.join(" ")).toMatch(/Height taken.*835 m/);
    expect(notes.join(" ")).toMatch(/UTC\+2:00, as at Upington/);
  });

  it("says nothing of what was given", () => {
    const { climate, notes, elev_m } = climateAt(-28.5, 21.2, 900, 1.5);
    expect([climate.utcOffset_h, elev_m]).toEqual([1.5, 900]);
    expect(notes.join(" ")).not.toMatch(/Height|Clock/);
  });

  it.each([
    ["far from any station, with a nearer place", -24.73, 15.3, /Temperatures are rough.*na-walvis-bay/],
    ["in the open sea", -45, 0, /doubtful.*open sea/],
    ["on a flagged coast", 60.4, 5.3, /doubtful round Bergen/],
    ["near a station", -28.4, 21.27, /usually within 2 °C/],
  ])("says how good it is %s", (_where, lat, lon, words) => expect(climateAt(lat, lon).notes.join(" ")).toMatch(words));

  it.each([
    [-60.01, 0, undefined, undefined, /latitude_deg must be -60 to 72, got -60.01/],
    [72.5, 0, undefined, undefined, /latitude_deg must be -60 to 72, got 72.5/],
    [NaN, 0, undefined, undefined, /latitude_deg must be -60 to 72, got NaN/],
    [0, 361, undefined, undefined, /longitude_deg must be -180 to 360, got 361/],
    [0, Infinity, undefined, undefined, /longitude_deg/],
    [0, 0, 9000, undefined, /elev_m must be -450 to 6000, got 9000/],
    [0, 0, 0, 15, /utcOffset_h must be -12 to 14, got 15/],
  ])("refuses %s, %s, %s, %s", (lat, lon, elev, utc, words) => {
    expect(() => climateAt(lat, lon, elev, utc)).toThrow(words);
    expect(() => climateAt(lat, lon, elev, utc)).toThrow(RangeError);
  });
});

describe("radiationAt", () => {
  it("refuses what the table does not cover", () => {
    expect(() => radiationAt(73, 0)).toThrow(/latitude_deg must be -60 to 72, got 73/);
    expect(() => radiationAt(0, NaN)).toThrow(/longitude_deg must be a number, got NaN/);
  });
});

describe("utcOffsetAt", () => {
  it("follows the nearest place on land, and the longitude at sea", () => {
    expect(utcOffsetAt(40.4, -3.7).utcOffset_h).toBe(1); // Madrid keeps the clock of Berlin
    expect(utcOffsetAt(-45, -100)).toEqual({ utcOffset_h: -7, from: "by longitude" });
    expect(Object.is(utcOffsetAt(-45, -3).utcOffset_h, 0)).toBe(true);
  });
});
