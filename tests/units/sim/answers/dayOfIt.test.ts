import { describe, expect, it } from "vitest";
import { dayOfIt, dayOfItInParts, type SetupDay } from "../../../../packages/sim/src/answers/dayOfIt.ts";
import { explain, explainInParts } from "../../../../packages/sim/src/answers/explain.ts";
import { ledgerOf } from "../../../../packages/sim/src/answers/hours.ts";
import { atOnce } from "../../../../packages/sim/src/answers/inParts.ts";
import { planStudy } from "../../../../packages/sim/src/answers/planStudy.ts";
import type { Setup, Trip } from "../../../../packages/sim/src/study.ts";
import { threeWay } from "../../../fixtures/loads.ts";
import { busySetup, openCamp, setup, shadedCamp, study, twoAgm } from "../../../fixtures/stays.ts";

const touring: Trip = {
  ...shadedCamp,
  nights: 6,
  drives: { everyNights: 2, hours: 2.5, departs: 9.25 },
  mains: { everyNights: 3, hours: 12, from: 18 },
};
const onTour: Setup = { ...busySetup, mainsCharger: { rated_A: 20 }, loads: [...busySetup.loads, threeWay] };
const onElement: Setup = setup(twoAgm, 900, [
  { ...threeWay, burns: "dc", thermostat: { ...threeWay.thermostat, dc: true } },
]);
const dayFor = (one: Setup, trip: Trip): SetupDay => dayOfIt(study([one], trip))[0]!;
const served = ({ hours }: SetupDay): number[] => hours.map(({ out }) => out.reduce((sum, { Wh }) => sum + Wh, 0));

/** The mean of a ledger's column at each hour of the clock over the first days, the first hour being 15:00. */
const byClock = (column: Float64Array, days: number): number[] =>
  Array.from({ length: 24 }, (_, clock) => {
    const at = Array.from({ length: days }, (_, day) => column[((clock + 9) % 24) + 24 * day]!);
    return at.reduce((sum, value) => sum + value, 0) / days;
  });

describe.each([
  ["parked", setup(twoAgm, 900), openCamp],
  ["with drives and mains, an element on the road and an inverter", onTour, touring],
  ["with an element all day", onElement, openCamp],
])("a day of it, %s", (_, one, trip) => {
  const day = dayFor(one, trip);
  const { ledger } = ledgerOf(study([one], trip), one.id);

  it("has 24 hours from midnight, and goes out as it was served, heating elements counted once", () => {
    expect(day.hours.length).toBe(24);
    byClock(ledger.served_Wh, day.days).forEach((Wh, clock) => expect(served(day)[clock]).toBeCloseTo(Wh, 9));
  });
  it("takes in what the ledger took in", () => {
    const columns = { sun_Wh: ledger.sunUsed_Wh, road_Wh: ledger.feed_Wh, mains_Wh: ledger.mains_Wh };
    for (const [key, column] of Object.entries(columns)) {
      byClock(column, day.days).forEach((Wh, clock) =>
        expect(day.hours[clock]!.in[key as keyof typeof columns]).toBeCloseTo(Wh, 9),
      );
    }
  });
});

describe("a day of it", () => {
  it("leaves out the days from the one on which the loads drop, but never the first", () => {
    const flat = dayFor(setup(twoAgm, 0), openCamp);
    const drop_days = explain(study([setup(twoAgm, 0)], openCamp), { skies: { seed: 1, draws: 1 } }).setups[0]!.days;
    expect(drop_days.average).toBeLessThan(openCamp.nights);
    expect(flat.days).toBe(Math.floor(drop_days.average!));
    const atOnceFlat = dayFor(setup(twoAgm, 0), { ...openCamp, startCharge: 0.1 });
    expect(atOnceFlat.days).toBe(1);
    expect(dayFor(setup(twoAgm, 900), openCamp).days).toBe(openCamp.nights);
  });
  it("lights lamps in the evening and takes sun by day", () => {
    const { hours } = dayFor(setup(twoAgm, 900), openCamp);
    const lights = (clock: number) => hours[clock]!.out.find(({ id }) => id === "lights")!.Wh;
    expect([lights(12), lights(20)]).toEqual([0, 18]);
    expect(hours[12]!.in.sun_Wh + hours[12]!.in.sunUnused_Wh).toBeGreaterThan(300);
    expect(hours[0]!.in.sun_Wh + hours[0]!.in.sunUnused_Wh).toBe(0);
  });
});

describe("a planned study", () => {
  const asked = study([setup(twoAgm, 300), { ...onTour, id: "b" }], touring);
  const skies = { seed: 1, draws: 20 };

  it("answers as one that plans for itself, asked again and again, another answer between the parts", () => {
    const plan = planStudy(asked, 20);
    const alone = explain(asked, { skies, horizon_days: 20 });
    const parts = explainInParts(asked, { skies, plan });
    expect(parts.next().done).toBe(false);
    expect(atOnce(dayOfItInParts(plan))).toEqual(dayOfIt(asked));
    expect(atOnce(parts)).toEqual(alone);
    expect(explain(asked, { skies, plan })).toEqual(alone);
  });
  it("must be of the study that is asked", () => {
    const other = { ...asked };
    expect(() => explain(other, { skies, plan: planStudy(asked, 20) })).toThrow(/^plan must be of the study asked/);
  });
});
