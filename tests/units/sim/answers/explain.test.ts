import { describe, expect, it } from "vitest";
import { explain } from "../../../../packages/sim/src/answers/explain.ts";
import { insideAt_C } from "../../../../packages/sim/src/answers/food.ts";
import type { Setup } from "../../../../packages/sim/src/study.ts";
import { familyFridge, inverter, lamp } from "../../../fixtures/loads.ts";
import { busySetup, lithium, openCamp, setup, shadedCamp, study, twoAgm } from "../../../fixtures/stays.ts";

const skies = { seed: 1, draws: 10 };
const answerFor = (one: Setup, trip = openCamp) => explain(study([one], trip), { skies }).setups[0]!;
const codes = (one: Setup, trip = openCamp): string[] => answerFor(one, trip).cautions.map(({ code }) => code);

describe("the skies asked for", () => {
  it.each([{ seed: 1, draws: 0 }, { seed: 1, draws: 2.5 }, { seed: 1, draws: NaN }, { rows: [] }])(
    "must be one or more: %j",
    (none) => {
      const asked = study([setup(twoAgm, 300)], openCamp);
      expect(() => explain(asked, { skies: none })).toThrow(/^draws must be a whole number from 1 to 100000, got/);
    },
  );
});

describe("a plain charger", () => {
  const behind = (rated_A: number, lost: number, watts = 200) =>
    answerFor(
      { ...setup(twoAgm, watts), solarCharger: { kind: "pwm", rated_A } },
      { ...openCamp, shade: lost === 0 ? [] : [{ from: 0, to: 24, lost }] },
    );

  it("is rated for the amps that shade leaves: 200 W in half shade give under 8 A, even in the clearest hour", () => {
    // 200 W over the 18 V of a panel of 36 cells are 11 A
    const [small, large] = [behind(8, 0.5), behind(30, 0.5)];
    expect(small.sun_Wh_day).toEqual(large.sun_Wh_day);
    expect(small.days).toEqual(large.days);
    expect(behind(8, 0).sun_Wh_day.available).toBeLessThan(behind(30, 0).sun_Wh_day.available);
  });
  it("says what its rating kept back: with that, as much sun as a larger one has", () => {
    const [small, large] = [behind(10, 0.2, 600), behind(1000, 0.2, 600)];
    expect(large.sun_Wh_day.overCharger).toBe(0);
    expect(small.sun_Wh_day.overCharger).toBeGreaterThan(0.3 * large.sun_Wh_day.available);
    const whole = small.sun_Wh_day.available + small.sun_Wh_day.overCharger;
    // amps are worth the bank's volts: one that is fed more stands up to a tenth higher, at 14.4 V and not at 13
    expect(whole / large.sun_Wh_day.available).toBeGreaterThan(0.9);
    expect(whole / large.sun_Wh_day.available).toBeLessThan(1.001);
  });
});

describe("where it goes", () => {
  it("gives each load its watt-hours, largest first, and all together the total", () => {
    const { use_Wh_day } = answerFor(setup(twoAgm, 300));
    expect(use_Wh_day.byLoad[0]!.id).toBe("fridge");
    expect(use_Wh_day.byLoad.reduce((sum, { Wh_day }) => sum + Wh_day, 0)).toBeCloseTo(use_Wh_day.total, 9);
    expect(use_Wh_day.byLoad.find(({ id }) => id === "lights")!.Wh_day).toBeCloseTo(18 * 4.5, 6);
  });
  it("gives the inverter's idle draw to the ac load that keeps it on", () => {
    const kettle = {
      ...lamp,
      id: "kettle",
      supply: "ac" as const,
      watts: 1000,
      use: [{ at: 7, minutes: 6, everyDays: 1 }],
    };
    const { use_Wh_day } = answerFor({ ...setup(twoAgm, 300, [kettle]), inverter });
    const running_W = 1000 + 0.05 * 1000 + (0.05 * 1000 ** 2) / inverter.rated_W;
    expect(use_Wh_day.total).toBeCloseTo(running_W / 10 + inverter.idle_W, 6);
  });
});

describe("food", () => {
  it("is said after the cut-off of the average sky, else of the dark one, and not where there is no fridge", () => {
    const flat = answerFor(setup(twoAgm, 300), shadedCamp);
    expect(flat.days.average).not.toBeNull();
    expect(flat.food.hoursFromCutOffTo5C).toBeGreaterThan(0);
    expect(flat.food.hoursFromCutOffTo8C).toBeGreaterThan(flat.food.hoursFromCutOffTo5C!);
    const never = answerFor(setup(lithium, 900), openCamp);
    expect(never.days.average).toBeNull();
    expect(never.food.hoursFromCutOffTo5C).toBeGreaterThan(0);
    expect(answerFor(setup(twoAgm, 0, [lamp])).food.hoursFromCutOffTo5C).toBeNull();
  });
  it("starts from the cabinet as it stands at that moment, between the ends of hours", () => {
    const inside_C = Float64Array.of(4, 4, 6, 8);
    expect([0, 1.9, 2.5, 3.25, 4].map((hour) => insideAt_C(inside_C, hour))).toEqual([4, 4, 5, 6.5, 8]);
  });
});

describe("cautions", () => {
  const radio = { ...lamp, id: "radio", name: "Radio", supply: "ac" as const, standby_W: 2 };
  it("name an ac load without an inverter, and one that keeps the inverter on", () => {
    expect(codes(setup(twoAgm, 300, [radio]))).toContain("no-inverter");
    const kept = answerFor({ ...setup(twoAgm, 300, [radio, familyFridge]), inverter }).cautions;
    expect(kept.find(({ code }) => code === "inverter-kept-on")?.text).toMatch(/Radio .* 384 Wh a day/);
    expect(codes({ ...setup(twoAgm, 300, [radio]), inverter: { ...inverter, on: "always" } })).not.toContain(
      "inverter-kept-on",
    );
    expect(codes(busySetup)).not.toContain("inverter-kept-on");
  });
  it("name a charger over what makers of the chemistry advise, for AGM and not for lithium", () => {
    const mains = { mainsCharger: { rated_A: 60 } };
    expect(codes({ ...setup(twoAgm, 300), ...mains })).toContain("charge-over-advised");
    expect(codes({ ...setup(lithium, 300), ...mains })).not.toContain("charge-over-advised");
    expect(codes(setup(twoAgm, 300))).not.toContain("charge-over-advised");
  });
  it("name panels without a charger", () => {
    expect(codes({ ...setup(twoAgm, 300), solarCharger: null })).toContain("no-solar-charger");
  });
});
