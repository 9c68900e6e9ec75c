import { expect, it } from "vitest";
import { darkHours } from "../../../../packages/sim/src/sun/darkHours.ts";
import { dryTropics, openCamp } from "../../../fixtures/stays.ts";

const at = (latitude_deg: number, month: number, day: number) =>
  darkHours({
    climate: { ...dryTropics, latitude_deg, longitude_deg: null, utcOffset_h: null },
    trip: { ...openCamp, month, day },
  });

// Truth: D&B eq. 1.6.10 by hand at 60° N with the solstice's declination, 23.44° (Meeus): 138.7°, 9.244 h either side of noon.
it("runs from sunset to sunrise, about solar noon where the longitude is not known", () => {
  const dark = at(60, 6, 21)!;
  expect(dark.from_h).toBeCloseTo(12 + 9.244, 1);
  expect(dark.from_h - 12).toBeCloseTo(12 - dark.to_h, 9);
});

it("is none under the midnight sun, and all day long in polar night", () => {
  expect(at(71, 6, 21)).toBeNull();
  expect(at(71, 12, 21)).toEqual({ from_h: 12, to_h: 12 });
});
