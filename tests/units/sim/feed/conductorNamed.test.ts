import { expect, it } from "vitest";
import { conductorNamed } from "../../../../packages/sim/src/feed/index.ts";

it.each([
  ["16 mm2", 16],
  ["2.5mm²", 2.5],
  ["25 sq mm", 25],
  ["6 mm auto", 4.6],
  ["4 MM Auto", 1.84],
])("reads %s as %s mm² of copper", (text, area_mm2) => expect(conductorNamed(text).area_mm2).toBe(area_mm2));

// ASTM B258 areas
it.each([
  ["6 AWG", 13.302],
  ["8 B&S", 8.366],
  ["2/0", 67.43],
  ["0 awg", 53.475],
])("reads %s by gauge", (text, area_mm2) => expect(conductorNamed(text).area_mm2).toBeCloseTo(area_mm2, 2));

it("says what a diameter hides", () => {
  expect(conductorNamed("6 mm auto").trap).toMatch(/holds about 4.6 mm² of copper/);
  expect(conductorNamed("6 mm2").trap).toBeNull();
});

it.each(["6 mm", "6", "fat", "", "7 mm auto", "0 mm2", "45 AWG"])("refuses %j, saying what is accepted", (text) => {
  expect(() => conductorNamed(text)).toThrow(RangeError);
});
