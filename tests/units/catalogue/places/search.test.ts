import { nearestNames, nearestPlaces, places, searchPlaces } from "@stayput/catalogue";
import { describe, expect, it } from "vitest";

const ids = (text: string, limit?: number) => searchPlaces(text, limit).map((place) => place.id);

describe("searchPlaces", () => {
  it.each([
    ["upi", "za-upington"],
    ["UPINGTON", "za-upington"],
    ["za-upington", "za-upington"],
    ["Östersund", "se-ostersund"],
    ["ostersund", "se-ostersund"],
    ["Bodø", "no-bodo"],
    ["La Pocatière", "ca-la-pocatiere"],
    ["Maan", "jo-ma-an"],
    ["kalahari", "za-upington"],
    ["uppington", "za-upington"],
    ["Windhuk", "na-windhoek"],
    ["perito moreno argentina", "ar-perito-moreno"],
    ["zzzz", undefined],
  ])("finds %s", (text, id) => expect(ids(text)[0]).toBe(id));

  it.each([
    ["NA", "NA", 4],
    ["namibia", "NA", 4],
    ["Türkiye", "TR", 4],
    ["turkey", "TR", 4],
  ])("finds a country by %s", (text, country, count) => {
    const found = searchPlaces(text, count);
    expect(found).toHaveLength(count);
    expect(found.every((place) => place.country === country)).toBe(true);
  });

  it("puts starts before parts", () => {
    const names = searchPlaces("cape", 50).map((place) => place.name.toLowerCase());
    const starts = names.map((name) => name.startsWith("cape"));
    expect(starts[0]).toBe(true);
    expect(starts.lastIndexOf(true)).toBeLessThan(starts.indexOf(false));
  });

  it("finds every place by its id and by its name", () => {
    for (const place of places) {
      expect(ids(place.id, 1)).toEqual([place.id]);
      expect(ids(place.name, 5), place.name).toContain(place.id);
    }
  });

  it("offers core places before anything is typed, and keeps to the limit", () => {
    expect(searchPlaces("", 7)).toHaveLength(7);
    expect(searchPlaces("  ", 500).every((place) => place.core)).toBe(true);
  });
});

describe("nearestNames", () => {
  it("offers what a slip of the pen meant", () => {
    expect(nearestNames("za-upingtn", 3)[0]).toBe("za-upington (Upington (Kalahari), South Africa)");
    expect(nearestPlaces("alice sprngs", 1)[0]!.id).toBe("au-alice-springs");
  });
  it("always offers as many as asked", () => expect(nearestNames("qqqqqqqq", 3)).toHaveLength(3));
});
