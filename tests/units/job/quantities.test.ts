import { parseQuantity, type Dimension } from "@stayput/job/quantities";
import { describe, expect, it } from "vitest";

const at12 = { volts_V: 12 };

describe("parseQuantity", () => {
  it.each<[string, Dimension, number]>([
    ["60 W", "power_W", 60],
    ["1.5 kW", "power_W", 1500],
    ["3 A", "power_W", 36],
    ["3A @ 24V", "power_W", 72],
    ["3 A at 24 V", "power_W", 72],
    ["400 Wp", "power_W", 400],
    ["55 Ah/day", "energy_Wh_day", 660],
    ["30 Ah per day", "energy_Wh_day", 360],
    ["1.2 kWh/day", "energy_Wh_day", 1200],
    ["1,2 kWh a day", "energy_Wh_day", 1200],
    ["7 kWh/week", "energy_Wh_day", 1000],
    ["720", "energy_Wh_day", 720],
    ["200 AH", "charge_Ah", 200],
    ["2.4 kWh", "charge_Ah", 200],
    ["30 amps", "current_A", 30],
    ["500 mA", "current_A", 0.5],
    ["230 V", "volts_V", 230],
    ["6 mm2", "area_mm2", 6],
    ["6 mm²", "area_mm2", 6],
    ["6 mm auto", "area_mm2", 4.6],
    ["6 mm auto", "diameter_mm", 6],
    ["2 h 30", "duration_h", 2.5],
    ["2h30", "duration_h", 2.5],
    ["1:45", "duration_h", 1.75],
    ["90 min", "duration_h", 1.5],
    ["5 min", "minutes", 5],
    ["0.5 h", "minutes", 30],
    ["18:30", "clock_h", 18.5],
    ["18h30", "clock_h", 18.5],
    ["6 pm", "clock_h", 18],
    ["9.30am", "clock_h", 9.5],
    ["noon", "clock_h", 12],
    ["18.5 h", "clock_h", 18.5],
    ["9.25h", "clock_h", 9.25],
    ["12 am", "clock_h", 0],
    ["12:15 pm", "clock_h", 12.25],
    ["60 %", "share", 0.6],
    ["77 °F", "temperature_C", 25],
    ["25 C", "temperature_C", 25],
    ["−5 °C", "temperature_C", -5],
    ["9 °F", "difference_K", 5],
    ["6 °C", "difference_K", 6],
    ["0.5 mΩ", "resistance_mOhm", 0.5],
    ["23 ft", "length_m", 7.0104],
    ["188 litres", "volume_L", 188],
    ["0.27 kg/day", "gas_g_day", 270],
    ["2 kg/day", "mass_kg_day", 2],
    ["10°", "angle_deg", 10],
  ])("%s as %s is %d", (text, dimension, value) => {
    expect(parseQuantity(text, dimension, at12)).toMatchObject({ ok: true, value });
  });

  // ASTM B258: 10 AWG is 2.588 mm, 5.26 mm²; 4/0 is 11.684 mm, 107.2 mm².
  it.each([
    ["10 AWG", 5.26],
    ["4/0 AWG", 107.2],
    ["8 B&S", 8.37],
  ])("%s holds %d mm² to a hundredth", (text, area) => {
    const read = parseQuantity(text, "area_mm2", at12);
    expect(read.ok && Math.abs(read.value - area) / area).toBeLessThan(0.002);
  });

  it("states the volts that it had to assume, and only then", () => {
    expect(parseQuantity("3 A", "power_W", at12)).toMatchObject({
      assumption: "3 A is taken at 12 V, which makes 36 W",
    });
    expect(parseQuantity("3 A at 12 V", "power_W", at12)).not.toHaveProperty("assumption");
    expect(parseQuantity("36 W", "power_W", at12)).not.toHaveProperty("assumption");
  });

  it("says what a name hides", () => {
    expect(parseQuantity("6 mm auto", "area_mm2", at12)).toMatchObject({
      assumption: expect.stringMatching(/about 4.6 mm²/),
    });
  });

  it.each<[string, Dimension, RegExp]>([
    ["1,200 W", "power_W", /two ways/],
    ["1.200,5 W", "power_W", /^a number written 1200 or 1.2, with one point or comma at most$/],
    ["1,200.5 W", "power_W", /with one point or comma at most$/],
    ["midnight", "clock_h", /hour of the clock.*midnight is 0 or 24/],
    ["24.5 h", "clock_h", /hour of the clock/],
    ["6 mm", "area_mm2", /"6 mm2", "10 AWG"/],
    ["3 A", "energy_Wh_day", /energy in a day/],
    ["60 Wh/day", "power_W", /running draw/],
    ["25:00", "clock_h", /hour of the clock/],
    ["2 h 75", "duration_h", /2 h 30/],
    ["1e999 A", "current_A", /amps/],
    ["NaN", "power_W", /watts/],
    ["Infinity W", "power_W", /watts/],
    ["", "power_W", /watts/],
    ["W", "power_W", /watts/],
    ["sqrt(4) A", "current_A", /amps/],
    ['createUnit("x") A', "current_A", /amps/],
    ["1 A; 2 A", "current_A", /amps/],
    ["2 A + 2 A", "current_A", /amps/],
    ["constructor", "current_A", /amps/],
    ["1 __proto__", "current_A", /amps/],
    ["1 toString", "current_A", /amps/],
    [`${"9".repeat(100_000)} A`, "current_A", /amps/],
    ["3 A at 0 V", "power_W", /watts/],
  ])("%s as %s is refused", (text, dimension, accepted) => {
    const read = parseQuantity(text, dimension, at12);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.accepted).toMatch(accepted);
    expect(!read.ok && read.given.length).toBeLessThan(100);
  });

  it("keeps mega and milli apart", () => {
    expect(parseQuantity("3 MW", "power_W", at12)).toMatchObject({ value: 3_000_000 });
    expect(parseQuantity("3 mW", "power_W", at12)).toMatchObject({ value: 0.003 });
  });
});
