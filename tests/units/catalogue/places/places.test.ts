import { climateOf, countries, findPlace, placeNotes, places } from "@stayput/catalogue";
import { describe, expect, it } from "vitest";

describe("places", () => {
  it("are the 298 of the published table, 184 of them core, each id once", () => {
    expect(places).toHaveLength(298);
    expect(places.filter((place) => place.core)).toHaveLength(184);
    expect(new Set(places.map((place) => place.id)).size).toBe(298);
  });

  it.each(places.map((place) => [place.id, place] as const))("%s is whole and believable", (_id, place) => {
    for (const table of [place.ghi_kWh_m2_day, place.tmax_C, place.tmin_C]) {
      expect(table).toHaveLength(12);
      expect(table.every(Number.isFinite)).toBe(true);
    }
    expect(place.tmax_C.every((max, month) => max > place.tmin_C[month]!)).toBe(true);
    expect(Math.min(...place.ghi_kWh_m2_day)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...place.ghi_kWh_m2_day)).toBeLessThan(10); // the sun above the air gives 12 at most
    expect(Math.abs(place.latitude_deg)).toBeLessThan(72);
    expect(Math.abs(place.longitude_deg)).toBeLessThanOrEqual(180);
    expect(Math.abs(place.utcOffset_h - place.longitude_deg / 15)).toBeLessThan(2.6); // no country strays further
    expect(place.elev_m).toBeGreaterThan(-450);
    expect(countries[place.country], "a country with a name").toBeDefined();
    expect(place.sourceId).toMatch(/^NASA-SSE6\+DWD-CLIMAT:\d+$/);
    expect(["obs", "mid", "blend", "normal", "interp"]).toContain(place.temperatureQuality);
  });

  it("reads a row as the published table has it", () => {
    expect(findPlace("au-alice-springs")).toEqual({
      id: "au-alice-springs",
      name: "Alice Springs",
      country: "AU",
      latitude_deg: -23.8,
      longitude_deg: 133.89,
      elev_m: 547,
      utcOffset_h: 9.5,
      ghi_kWh_m2_day: [7.51, 6.92, 6.38, 5.46, 4.41, 4.02, 4.42, 5.23, 6.17, 6.81, 7.24, 7.38],
      tmax_C: [37.2, 36.3, 33.5, 29.6, 23.8, 20, 20.9, 23.7, 28.7, 32.5, 34.7, 36],
      tmin_C: [22.5, 20.9, 18.2, 13, 7.7, 4.1, 3.9, 5.7, 10.8, 15.1, 18.3, 21],
      core: true,
      temperatureQuality: "obs",
      temperatureYears: 17,
      radiationFlag: "ok",
      region: "Australia",
      sourceId: "NASA-SSE6+DWD-CLIMAT:94326",
    });
  });

  it("gives the simulation its climate, and nothing for an id it does not have", () => {
    const place = findPlace("za-upington")!;
    expect(climateOf(place)).toMatchObject({ latitude_deg: place.latitude_deg, utcOffset_h: 2, dayToDay: 0.29 });
    expect(findPlace("za-nowhere")).toBeUndefined();
  });
});

describe("placeNotes", () => {
  const notesOf = (id: string) => placeNotes(findPlace(id)!).join(" ");
  it("says nothing of a good place", () => expect(placeNotes(findPlace("au-alice-springs")!)).toEqual([]));
  it("warns of doubtful sunshine", () => expect(notesOf("no-bergen")).toMatch(/Sunshine.*too high/));
  it("warns of pieced-together temperatures", () => expect(notesOf("na-walvis-bay")).toMatch(/Temperatures.*short/));
  it("warns of worked-out temperatures", () => expect(notesOf("dk-copenhagen")).toMatch(/stations around/));
  it("warns of few years", () => expect(notesOf("au-broken-hill")).toMatch(/3 years/));
  it("has words for every flagged place", () => {
    const flagged = places.filter((p) => p.radiationFlag === "check" || p.temperatureQuality !== "obs");
    expect(flagged).toHaveLength(33); // counted in the published table: 23 checked, 10 not from a station of their own
    for (const place of flagged) expect(placeNotes(place), place.id).not.toEqual([]);
  });
});
