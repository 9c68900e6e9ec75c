import { expect, it } from "vitest";
import { beamRatio, beamRatioOfHour } from "../../../../packages/sim/src/sun/beamRatio.ts";
import { directionOf, sunDirection } from "../../../../packages/sim/src/sun/direction.ts";
import { sunAt } from "../../../../packages/sim/src/sun/sunDay.ts";

it("lifts a sun under 5° to 5° at its own azimuth", () => {
  const wall = directionOf(90, 120);
  expect(beamRatio(directionOf(89, 120), wall)).toBeCloseTo(1 / Math.tan((5 * Math.PI) / 180), 9);
  expect(beamRatio(directionOf(89, 120), wall)).toBeCloseTo(beamRatio(directionOf(85, 120), wall), 9);
});
it("gives a flat plane 1, low sun and high", () => {
  for (const zenith of [0, 40, 84, 88, 90]) expect(beamRatio(directionOf(zenith, 77), directionOf(0, 0))).toBe(1);
});
it("gives 0 to a plane the sun is behind", () => expect(beamRatio(directionOf(60, 180), directionOf(90, 0))).toBe(0));

it("follows the hour finely: within 0.5 % of a thousand pieces on a steep panel in winter", () => {
  const day = sunAt(52, -23, 1361);
  const plane = directionOf(60, 180);
  const start = (-3 * Math.PI) / 12;
  const fine = Array.from({ length: 1000 }, (_, i) => sunDirection(day, start + ((i + 0.5) / 1000) * (Math.PI / 12)));
  const ratio =
    fine.reduce((sum, sun) => sum + sun.up * beamRatio(sun, plane), 0) / fine.reduce((sum, sun) => sum + sun.up, 0);
  expect(Math.abs(beamRatioOfHour(day, plane, start) / ratio - 1)).toBeLessThan(0.005);
});
it("is 0 for an hour of night", () => expect(beamRatioOfHour(sunAt(52, -23, 1361), directionOf(60, 180), 3)).toBe(0));
