import { describe, expect, it } from "vitest";
import { compare } from "../../../../packages/sim/src/answers/compare.ts";
import { sayGain } from "../../../../packages/sim/src/answers/compareSaid.ts";
import { roundTheYear } from "../../../../packages/sim/src/answers/roundTheYear.ts";
import { lamp } from "../../../fixtures/loads.ts";
import { lithium, openCamp, setup, study, twoAgm } from "../../../fixtures/stays.ts";

const gain = { p10_days: 1, p50_days: 2.14, p90_days: 4, mean_days: 2, least_days: 0.78, atLeast: false };
const said = (change: Partial<typeof gain>) => sayGain("400 W", "As it came", { ...gain, ...change }, 60);

describe("compare", () => {
  it.each([
    [{}, "400 W lasts 2.1 days longer than As it came on a middling trip, never less than 0.8 days longer."],
    [{ least_days: 0 }, "400 W lasts 2.1 days longer than As it came on a middling trip, never less."],
    [
      { least_days: -0.5 },
      "400 W lasts 2.1 days longer than As it came on a middling trip, but up to 0.5 days less on some.",
    ],
    [
      { p10_days: -3, p50_days: -2, p90_days: -1, least_days: -12 },
      "400 W lasts 2 days less than As it came on a middling trip, and up to 12 days less.",
    ],
    [
      { p10_days: 0, p50_days: 0, least_days: 0 },
      "400 W mostly lasts as long as As it came, up to 4 days longer or more on one in ten.",
    ],
    [{ p10_days: 0, p50_days: 0, p90_days: 0, least_days: 0 }, "400 W lasts as long as As it came."],
    [
      { p10_days: 0, p50_days: 0, p90_days: 0, least_days: 0, atLeast: true },
      "400 W and As it came both outlast 60 days, or run down together: days do not tell them apart.",
    ],
    [
      { atLeast: true },
      "400 W lasts 2.1 days longer than As it came on a middling trip, never less than 0.8 days longer. Where it outlasts 60 days, the difference is larger still.",
    ],
  ])("says a gain in words: %j", (change, sentence) => {
    expect(said(change)).toBe(sentence);
  });

  it("names what takes most, and nothing where nothing draws", () => {
    const byNothing = setup(twoAgm, 300, [{ ...lamp, watts: 0 }]);
    const [used, idle] = compare(study([setup(twoAgm, 300), { ...byNothing, id: "b" }]), {
      skies: { seed: 1, draws: 3 },
    }).setups;
    expect(used!.flattenedBy!.id).toBe("fridge");
    expect(idle!.flattenedBy).toBeNull();
  });

  it("takes payload, price and mass from the setup", () => {
    const heavy = { ...setup(lithium, 400), id: "b", price: 41500, mass_kg: -32 };
    const options = { skies: { seed: 1, draws: 5 }, payload_kg: 90 };
    const [first, second] = compare(study([setup(twoAgm, 300), heavy]), options).setups;
    expect(first).toMatchObject({ gain: null, said: null, payloadLeft_kg: 90 });
    expect(second).toMatchObject({ price: 41500, mass_kg: -32, payloadLeft_kg: 122 });
    expect(compare(study([heavy]), { skies: options.skies }).setups[0]!.payloadLeft_kg).toBeNull();
  });

  it.each([
    [{ skies: { seed: 1, draws: 0 } }, "draws must be a whole number from 1 to 100000, got 0"],
    [{ skies: { rows: [] } }, "draws must be a whole number from 1 to 100000, got 0"],
    [{ horizon_days: NaN }, "horizon_days must be 1 to 366, got NaN"],
    [{ payload_kg: Infinity }, "payload_kg must be -1000000 to 1000000, got Infinity"],
  ])("refuses %j", (options, message) => {
    expect(() => compare(study([setup(twoAgm, 300)]), options)).toThrow(new RangeError(message));
  });

  it("refuses to compare nothing", () => {
    expect(() => compare(study([]))).toThrow("setups must be a whole number from 1 to 100, got 0");
  });
});

describe("roundTheYear", () => {
  it("gives for each month what compare gives of a trip begun in it", () => {
    const setups = [setup(twoAgm, 200), { ...setup(lithium, 300), id: "b" }];
    const skies = { seed: 2, draws: 6 };
    const year = roundTheYear(study(setups), skies, 30);
    for (const month of [1, 6, 12]) {
      const there = compare(study(setups, { ...openCamp, month }), { skies, horizon_days: 30 }).setups;
      year.setups.forEach(({ months }, i) => {
        const { days, chanceOfLasting } = there[i]!;
        expect(months[month - 1]).toEqual({
          month,
          average: expect.closeTo(days.average!, 9), // compare keeps a ledger: the same hours, added up otherwise
          drawn: days.drawn,
          chance: chanceOfLasting,
        });
      });
    }
  });

  it("begins on a month's last day where the month has no such day", () => {
    const skies = { seed: 2, draws: 3 };
    const begun = (month: number, day: number) => {
      const { setups } = roundTheYear(study([setup(twoAgm, 200)], { ...openCamp, month, day }), skies, 10);
      return setups[0]!.months;
    };
    expect(begun(1, 31)[3]).toEqual(begun(4, 30)[3]);
    expect(begun(1, 31)[0]).not.toEqual(begun(4, 30)[0]);
  });

  it("refuses skies that are none", () => {
    expect(() => roundTheYear(study([setup(twoAgm, 1)]), { seed: 1, draws: 2.5 })).toThrow(
      "draws must be a whole number",
    );
  });
});
