import { describe, expect, it } from "vitest";
import { typedLoad } from "../../../../apps/web/src/worker/typedLoad.ts";

describe("a load typed free-hand", () => {
  // by hand: amps times volts; a day's watt-hours over 24 h
  it.each([
    ["freezer 55 Ah/day", 12, "freezer", 27.5, true],
    ["freezer 55 Ah/day", 24, "freezer", 55, true],
    ["Old freezer, 1.2 kWh/day", 12, "Old freezer", 50, true],
    ["heater 3 A", 12, "heater", 36, false],
    ["heater: 3A", 24, "heater", 72, false],
    ["pump 60 W", 12, "pump", 60, false],
    ["12 V pump 60 W", 12, "12 V pump", 60, false],
    ["fan 3 A at 24 V", 12, "fan", 72, false],
    ["3 A", 12, "", 36, false],
    ["720 Wh/day", 12, "", 30, true],
  ])("%s at %d V", (text, volts_V, name, watts, allDay) => {
    expect(typedLoad(text, volts_V)).toMatchObject({ name, watts, allDay });
  });
  it("says what it comes to", () => {
    expect(typedLoad("freezer 55 Ah/day", 12)!.said).toBe("660 Wh a day at 12 V, 27.5 W day and night");
    expect(typedLoad("heater 3 A", 12)!.said).toBe("36 W at 12 V, from 18:00 to 22:00");
    expect(typedLoad("pump 60 W", 12)!.said).toBe("60 W, from 18:00 to 22:00");
  });
  it.each(["freezer", "188 fridge", "fan 2", "tv 60 cm", "lamp 0 W", "", "50 L box"])(
    "takes no quantity from “%s”",
    (text) => expect(typedLoad(text, 12)).toBeNull(),
  );
});
