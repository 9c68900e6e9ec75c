import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { explain, explainInParts } from "../../packages/sim/src/answers/explain.ts";
import type { Days, ExplainAnswer, SetupAnswer } from "../../packages/sim/src/answers/types.ts";
import type { Climate, Study } from "../../packages/sim/src/study.ts";
import { familyFridge } from "../fixtures/loads.ts";
import { busySetup, openCamp, setup, study, twoAgm } from "../fixtures/stays.ts";
import { anyClimate, anySetup, anyStudy, int, scaled } from "./arbitraries/study.ts";

const horizon_days = 20;
const quick = { skies: { seed: 11, draws: 6 }, horizon_days };
const long = (days: Days): number => days ?? Infinity;
const first = (answer: ExplainAnswer): SetupAnswer => answer.setups[0]!;

/** Every number of an answer is finite; null is for what did not happen. */
function allFinite(value: unknown, path = ""): void {
  if (typeof value === "number") {
    if (!Number.isFinite(value)) expect.fail(`${path} is ${value}`);
  } else if (value !== null && typeof value === "object") {
    for (const [key, inner] of Object.entries(value)) allFinite(inner, `${path}.${key}`);
  }
}

describe("an answer", () => {
  it("holds no number that is not one, and keeps its order", () => {
    fc.assert(
      fc.property(anyStudy, (asked) => {
        const answer = explain(asked, quick);
        allFinite(answer);
        const { days, reserveDays, chanceOfLasting, use_Wh_day, sun_Wh_day, charge } = first(answer);
        for (const { drawn, dark, average } of [days, reserveDays]) {
          expect(long(drawn.p10)).toBeLessThanOrEqual(long(drawn.p50));
          expect(long(drawn.p50)).toBeLessThanOrEqual(long(drawn.p90));
          for (const one of [drawn.p10, drawn.p50, drawn.p90, average]) {
            expect(long(one)).toBeGreaterThanOrEqual(long(dark) - 1e-4);
          }
        }
        expect(long(reserveDays.dark)).toBeLessThanOrEqual(long(days.dark) + 1e-9);
        expect(long(reserveDays.drawn.p50)).toBeLessThanOrEqual(long(days.drawn.p50) + 1e-9);
        expect(chanceOfLasting >= 0 && chanceOfLasting <= 1).toBe(true);
        const shares = use_Wh_day.byLoad.reduce((sum, { share }) => sum + share, 0);
        expect(shares === 0 || Math.abs(shares - 1) < 1e-9).toBe(true);
        expect(sun_Wh_day.used).toBeLessThanOrEqual(sun_Wh_day.available + 1e-6);
        for (const band of Object.values(charge) as number[][]) {
          expect(band).toHaveLength(horizon_days * 24 + 1);
          for (const shown of band) if (!(shown >= 0 && shown <= 1)) expect.fail(`shows ${shown}`);
        }
      }),
    );
  });
  it("is the same for the same seed, and does not depend on which other setups stand beside it", () => {
    fc.assert(
      fc.property(anyStudy, anySetup, (asked, other) => {
        const once = explain(asked, quick);
        expect(explain(asked, quick)).toEqual(once);
        expect(explain({ ...asked, setups: [other, ...asked.setups] }, quick).setups[1]).toEqual(once.setups[0]);
      }),
      { numRuns: 30 },
    );
  });
  it("of each part grows into the whole", () => {
    fc.assert(
      fc.property(anyStudy, (asked) => {
        const parts = explainInParts(asked, quick);
        let progress = -1;
        for (let part = parts.next(); ; part = parts.next()) {
          if (part.done === true) {
            expect(part.value).toEqual(explain(asked, quick));
            return;
          }
          expect(part.value.progress).toBeGreaterThan(progress);
          progress = part.value.progress;
          if (part.value.soFar !== undefined) allFinite(part.value.soFar);
        }
      }),
      { numRuns: 20 },
    );
  });
  it("never lasts less without one of its loads", () => {
    fc.assert(
      fc.property(anyStudy, (asked) => {
        const { days, without } = first(explain(asked, quick));
        for (const each of without) {
          expect(long(each.days)).toBeGreaterThanOrEqual(long(days.average) - 1e-4);
          expect(long(each.daysP50)).toBeGreaterThanOrEqual(long(days.drawn.p50) - 1e-4);
        }
      }),
      { numRuns: 50 },
    );
  });
  it("says of each load left out what the job without it would say", () => {
    fc.assert(
      fc.property(anyStudy, (asked) => {
        const one = asked.setups[0]!;
        for (const each of first(explain(asked, quick)).without) {
          const loads = one.loads.filter(({ id }) => id !== each.load);
          const alone = first(explain({ ...asked, setups: [{ ...one, loads }] }, quick)).days;
          // The average day keeps a ledger, which adds the same hours up otherwise.
          if (each.days === null) expect(alone.average).toBeNull();
          else expect(each.days).toBeCloseTo(alone.average!, 9);
          expect(each.daysP50).toEqual(alone.drawn.p50);
        }
      }),
      { numRuns: 30 },
    );
  });
});

/** The same light and warmth half a year on, on the other side of the equator. */
const turned = (climate: Climate): Climate => {
  const half = (months: readonly number[]): number[] => [...months.slice(6), ...months.slice(0, 6)];
  return {
    ...climate,
    latitude_deg: -climate.latitude_deg,
    longitude_deg: null,
    utcOffset_h: null,
    ghi_kWh_m2_day: half(climate.ghi_kWh_m2_day),
    tmax_C: half(climate.tmax_C),
    tmin_C: half(climate.tmin_C),
  };
};

it("north and south mirror each other: latitude and month turned, the days are nearly the same under the same clearness", () => {
  // Not quite: the earth is 3 % nearer the sun in January, and half years differ in length by some days.
  const anyMiddling = fc
    .tuple(anyClimate, int(10, 45))
    .map(([climate, latitude_deg]) => ({ ...climate, latitude_deg }));
  const anyRow = fc.array(scaled(0.1, 0.75, 100), { minLength: 16, maxLength: 16 });
  let apart = 0;
  fc.assert(
    fc.property(anyMiddling, int(1, 12), anyRow, (climate, month, row) => {
      const north = { ...climate, longitude_deg: null, utcOffset_h: null };
      const options = { skies: { rows: [row] }, without: false };
      const one = setup(twoAgm, 200, [familyFridge]);
      const days = [
        first(explain(study([one], { ...openCamp, month }, north), options)).days.drawn.p50,
        first(explain(study([one], { ...openCamp, month: ((month + 5) % 12) + 1 }, turned(north)), options)).days.drawn
          .p50,
      ].map((found) => found ?? 15);
      if (Math.abs(days[0]! - days[1]!) > 0.15 * days[0]!) apart++;
    }),
    { numRuns: 60 },
  );
  expect(apart).toBeLessThanOrEqual(6); // a night more or less, near balance
});

describe("towards the pole", () => {
  const arctic: Climate = {
    latitude_deg: 70,
    longitude_deg: 25,
    utcOffset_h: 1,
    ghi_kWh_m2_day: [0, 0.3, 1.4, 3.3, 4.8, 5.2, 4.7, 3.3, 1.8, 0.6, 0.1, 0],
    tmax_C: [-5, -5, -2, 2, 7, 12, 15, 14, 9, 3, -1, -4],
    tmin_C: [-13, -13, -10, -5, 0, 5, 8, 7, 3, -2, -8, -11],
    dayToDay: 0.29,
  };
  it.each([12, 6, 3, 9])("month %i is finite, and the sun helps no less than the dark", (month) => {
    const answer = explain(study([setup(twoAgm, 300), busySetup], { ...openCamp, month }, arctic), quick);
    allFinite(answer);
    for (const { days } of answer.setups) expect(long(days.average)).toBeGreaterThanOrEqual(long(days.dark) - 1e-9);
  });
  it("polar night gives no sun, midnight sun some in every hour", () => {
    const sunIn = (month: number): number =>
      first(explain(study([setup(twoAgm, 300)], { ...openCamp, month, day: 15 }, arctic), quick)).sun_Wh_day.available;
    expect(sunIn(12)).toBeLessThan(1);
    expect(sunIn(6)).toBeGreaterThan(500);
  });
});

describe("what is refused", () => {
  const asked: Study = study([setup(twoAgm, 300)]);
  it.each([
    ["no draws", () => explain(asked, { skies: { seed: 1, draws: 0 } }), /draws must be a whole number from 1/],
    ["a sky row that is too short", () => explain(asked, { skies: { rows: [[0.5, 0.5]] } }), /nights must be/],
    [
      "clearness over 1",
      () => explain(asked, { skies: { rows: [new Array<number>(9).fill(1.2)] } }),
      /clearness must be/,
    ],
    ["nights past the horizon", () => explain(asked, { horizon_days: 3 }), /nights must be 1 to 3, got 5/],
  ])("%s", (_what, ask, says) => expect(ask).toThrow(says));
});
