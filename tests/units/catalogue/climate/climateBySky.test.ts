import { skyClasses } from "@stayput/catalogue";
import { climateBySky, stations } from "@stayput/catalogue/grid";
import { monthlyClearness } from "@stayput/sim";
import { describe, expect, it } from "vitest";

/** Mean of H0 over June at a latitude, by the handbook's formula with Cooper's declination (D&B eqs 1.6.1a, 1.10.3). */
function juneMean_kWh(latitude_deg: number): number {
  const phi = (latitude_deg * Math.PI) / 180;
  let sum = 0;
  for (let n = 152; n <= 181; n++) {
    const delta = ((23.45 * Math.PI) / 180) * Math.sin((2 * Math.PI * (284 + n)) / 365);
    const sunset = Math.acos(Math.min(1, Math.max(-1, -Math.tan(phi) * Math.tan(delta))));
    const distance = 1 + 0.033 * Math.cos((2 * Math.PI * n) / 365);
    const heights = Math.cos(phi) * Math.cos(delta) * Math.sin(sunset) + sunset * Math.sin(phi) * Math.sin(delta);
    sum += ((24 * 1361) / Math.PI) * distance * heights;
  }
  return sum / 30 / 1000;
}

describe("climateBySky", () => {
  it.each([-35, 0, 52, 70])("gives June the class's share of the sun above the air at %s°", (latitude_deg) => {
    for (const { id, clearness } of skyClasses) {
      const june = climateBySky(latitude_deg, id).climate.ghi_kWh_m2_day[5]!;
      // 1 %: Cooper's declination is up to 0.9° off the series that the simulation uses, least so near a solstice
      expect(Math.abs(june / (clearness * juneMean_kWh(latitude_deg)) - 1)).toBeLessThan(0.01);
    }
  });

  it("comes back out of the simulation as the same clearness, every month", () => {
    for (const k of monthlyClearness(climateBySky(-30, "mixed").climate).clearness) expect(k).toBeCloseTo(0.5, 9);
  });

  it("takes temperatures from stations within 2.5°, all of them under clear skies", () => {
    const band = stations().filter((station) => Math.abs(station.latitude_deg + 30) <= 2.5);
    expect(band.length).toBeGreaterThan(20);
    const january = band.reduce((sum, { tmax_C }) => sum + tmax_C[0]!, 0) / band.length;
    expect(climateBySky(-30, "clear").climate.tmax_C[0]).toBeCloseTo(january, 9);
  });

  it("takes the evener half under mixed and dull skies", () => {
    const swing = (sky: "clear" | "mixed" | "dull") => {
      const { tmax_C } = climateBySky(50, sky).climate;
      return Math.max(...tmax_C) - Math.min(...tmax_C);
    };
    expect(swing("mixed")).toBeLessThan(swing("clear") - 2);
    expect(swing("dull")).toBe(swing("mixed"));
  });

  it("knows no longitude and no clock, and says that it is a guess", () => {
    const { climate, notes } = climateBySky(-30, "dull");
    expect([climate.longitude_deg, climate.utcOffset_h]).toEqual([null, null]);
    expect(notes.join(" ")).toMatch(/guess/);
  });

  it.each([-60, -58.5, -57, 0, 72])("answers at %s° too, polar night and empty seas included", (latitude_deg) => {
    const { ghi_kWh_m2_day, tmax_C, tmin_C } = climateBySky(latitude_deg, "mixed").climate;
    expect([...ghi_kWh_m2_day, ...tmax_C, ...tmin_C].every(Number.isFinite)).toBe(true);
    expect(Math.min(...ghi_kWh_m2_day)).toBeGreaterThanOrEqual(0);
  });

  it("refuses other latitudes and skies", () => {
    expect(() => climateBySky(80, "clear")).toThrow(/latitude_deg must be -60 to 72, got 80/);
    expect(() => climateBySky(0, "grey" as "dull")).toThrow(/sky must be clear, mixed, dull, got grey/);
  });
});
