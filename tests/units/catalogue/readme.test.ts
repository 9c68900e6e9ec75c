import { credits, findPlace, nearestNames, placeNotes, searchAppliances, searchPlaces } from "@stayput/catalogue";
import { climateAt, climateBySky } from "@stayput/catalogue/grid";
import { expect, it } from "vitest";

it("the README's example answers as printed", () => {
  expect(searchPlaces("upi")[0]?.id).toBe("za-upington");
  expect(nearestNames("za-upingtn", 1)).toEqual(["za-upington (Upington (Kalahari), South Africa)"]);
  expect(placeNotes(findPlace("no-bergen")!)[0]).toMatch(/^Sunshine here is doubtful: /);
  expect(searchAppliances("ket")[0]).toMatchObject({ id: "kettle", watts: 1500 });
  expect(climateAt(-28.4, 21.27).climate.tmax_C[0]).toBeCloseTo(36.69, 2);
  expect(climateAt(-28.4, 21.27).notes.length).toBeGreaterThan(1);
  expect(climateBySky(-28, "clear").climate.ghi_kWh_m2_day).toHaveLength(12);
  expect(credits.map((credit) => credit.printed)).toHaveLength(2);
});
