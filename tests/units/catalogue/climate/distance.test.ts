import { distance_km } from "@stayput/catalogue";
import { expect, it } from "vitest";

it("is a quarter of the way round from pole to equator", () => {
  expect(distance_km(90, 0, 0, 123)).toBeCloseTo((Math.PI / 2) * 6371, 6);
});
it("is a nautical mile for a minute of latitude, within the half per cent of a sphere", () => {
  expect(Math.abs(distance_km(45, 10, 45 + 1 / 60, 10) / 1.852 - 1)).toBeLessThan(0.005);
});
it("crosses the date line the short way", () => expect(distance_km(0, 179.5, 0, -179.5)).toBeCloseTo(111.195, 2));
it("is finite at the antipodes and nothing at home", () => {
  expect(distance_km(10, 20, -10, -160)).toBeCloseTo(Math.PI * 6371, 3);
  expect(distance_km(10, 20, 10, 20)).toBe(0);
});
