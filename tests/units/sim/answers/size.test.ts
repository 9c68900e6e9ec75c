import { describe, expect, it } from "vitest";
import { size } from "../../../../packages/sim/src/answers/size.ts";
import type { SizeRequest } from "../../../../packages/sim/src/answers/sizeTypes.ts";
import type { Climate } from "../../../../packages/sim/src/study.ts";
import { arrayRung, bankRung, request } from "../../../fixtures/sizing.ts";
import { dryTropics, openCamp, setup, study, twoAgm } from "../../../fixtures/stays.ts";

const skies = { seed: 1, draws: 40 };
const fitted = setup(twoAgm, 300);
const ask = (change: Partial<SizeRequest> = {}, climate: Climate = dryTropics) =>
  size(study([fitted], openCamp, climate), fitted, request(change), skies);
const bare = { price: null, mass_kg: null };
/** High latitude: hardly any sun in midwinter, plenty in summer. */
const far: Climate = {
  ...dryTropics,
  latitude_deg: 60,
  longitude_deg: 10,
  utcOffset_h: 1,
  ghi_kWh_m2_day: [0.3, 0.9, 2.2, 3.8, 5.2, 5.7, 5.3, 4.1, 2.5, 1.1, 0.4, 0.2],
  tmax_C: [-2, -1, 3, 8, 15, 19, 21, 19, 14, 8, 3, -1],
  tmin_C: [-8, -8, -5, -1, 4, 9, 11, 10, 6, 2, -3, -7],
};

describe("size", () => {
  it("says the pick, its chance in the worst month, and why that one", () => {
    const { pick, reason, worstMonth, charger_A, fitting, inTheWay, nearest } = ask();
    expect(pick).toEqual(fitting[0]);
    expect([inTheWay, nearest]).toEqual([[], null]);
    expect(charger_A).toBe(Math.ceil(pick!.array_W / 12));
    expect([6, 7, 8]).toContain(worstMonth);
    expect(reason).toMatch(
      /^\d+ Ah of (AGM|lithium iron phosphate) with \d+ W of panels lasts 5 nights on \d+ of 100 trips even in (June|July|August), the worst of the months asked \(90 asked\)\. It is the cheapest of the \d+ smallest pairs that do it\.$/,
    );
  });

  it("asks for no solar charger where the pick has no panels", () => {
    const { pick, charger_A } = ask({ arrays: [arrayRung(0)], nights: 1, chance: 0.5 });
    expect([pick!.array_W, charger_A]).toEqual([0, null]);
  });

  it("comes nearest with the largest pair where none lasts under any sky", () => {
    const { nearest } = ask({ nights: 60, arrays: [arrayRung(0), arrayRung(10)] });
    expect(nearest).toMatchObject({ chance: 0, bank_Ah: 360, array_W: 10 });
  });

  it("takes the last day of a month that has no such day as that of arrival", () => {
    const late = (month: number, day: number) =>
      size(study([fitted], { ...openCamp, month, day }), fitted, request({ months: [6] }), skies).pick;
    expect(late(1, 31)).toEqual(late(6, 30));
  });

  it("says what a step either way would do, and cost", () => {
    const { pick, steps } = ask();
    expect(steps.length).toBeGreaterThan(1);
    for (const { change, point, said } of steps) {
      const smaller = change.startsWith("smaller");
      if (smaller) expect(point.chance).toBeLessThan(0.9);
      else expect(point.chance).toBeGreaterThanOrEqual(pick!.chance);
      const by = Math.abs(point.price! - pick!.price!).toLocaleString("en-GB");
      expect(said).toMatch(smaller ? /^The next smaller/ : /^The next larger/);
      expect(said.endsWith(`, for ${by} ${smaller ? "less" : "more"}.`)).toBe(true);
    }
  });

  it("goes by mass where prices are not all known, and by bank where neither is", () => {
    const noPrices = ask({
      banks: request().banks.map((bank) => ({ ...bank, price: null })),
    });
    expect(noPrices.pick!.chemistry).toBe("lfp");
    expect(noPrices.reason).toContain("It is the lightest of");
    const nothing = ask({
      banks: request().banks.map((bank) => ({ ...bank, ...bare })),
      arrays: request().arrays.map((array) => ({ ...array, ...bare })),
    });
    expect(nothing.reason).toContain("It has the smallest bank of");
  });

  it("picks a larger size where it costs less", () => {
    const plain = ask({ chemistries: ["agm"] }).pick!;
    const bargain = { ...bankRung("agm", plain.bank_Ah + 60), price: 1 };
    const answer = ask({ chemistries: ["agm"], banks: [...request().banks, bargain] });
    expect(answer.pick).toMatchObject({ bank_Ah: bargain.capacity_Ah, price: 1 + answer.pick!.array_W * 10 });
  });

  it.each([
    [
      "budget",
      { budget: 5000 },
      ["budget"],
      /would last .* for [\d,]+ at \d+ kg, but not within the budget\. The nearest/,
    ],
    ["payload", { payload_kg: 1 }, ["payload"], /but not within the payload\. No pair at all fits the payload\.$/],
    [
      "unknown prices",
      { budget: 90_000, banks: request().banks.map((bank) => ({ ...bank, price: null })) },
      ["prices-not-known"],
      /would last .*, but prices are not known\./,
    ],
    [
      "roof",
      { roof_W: 100, nights: 30 },
      ["roof"],
      /The roof stands in the way: it takes 100 W, and .* would do\. The nearest within/,
    ],
    [
      "load",
      { nights: 60, chance: 1, arrays: [arrayRung(0), arrayRung(50)] },
      ["load"],
      /^Nothing on the ladder lasts 60 nights on 100 of 100 trips\. What runs stands in the way: about [\d,]+ Wh a day are used, and the largest array, 50 W, brings about \d+ Wh on a usual day\. Not even \w+ would be sunny enough; a smaller load or charging on the way is needed\. The nearest is/,
    ],
    ["no panels", { nights: 60, arrays: [arrayRung(0)] }, ["load"], /there are no panels on the ladder\./],
  ])("says that the %s stands in the way", (_, change, obstacles, sentence) => {
    const answer = ask(change);
    expect(answer.pick).toBeNull();
    expect(answer.inTheWay).toEqual(obstacles);
    expect(answer.reason).toMatch(sentence);
    expect(answer.charger_A).toBeNull();
  });

  it("says that the winter sun stands in the way where summer would do", () => {
    const answer = ask({ months: [12], nights: 14 }, far);
    expect(answer.inTheWay).toEqual(["sun"]);
    expect(answer.reason).toMatch(
      /The sun of December stands in the way: .* In June the largest pair would do\. The nearest is/,
    );
    expect(answer.nearest!.chance).toBeLessThan(0.9);
  });

  it("says that the charge on arrival stands in the way where a full bank would do", () => {
    const empty = study([fitted], { ...openCamp, startCharge: 0.02 }, dryTropics);
    const answer = size(empty, fitted, request(), skies);
    expect(answer.inTheWay).toEqual(["start"]);
    expect(answer.reason).toMatch(
      /The charge on arrival stands in the way: the bank arrives at 2 %, and .* would do if it came full\. The nearest is/,
    );
    const hopeless = size(empty, fitted, request({ nights: 60, arrays: [arrayRung(0)] }), skies);
    expect(hopeless.inTheWay).toEqual(["load"]);
  });

  it("has nothing to offer where the roof takes not even the smallest array, and says so", () => {
    const answer = ask({ roof_W: 50 });
    expect(answer.inTheWay).toEqual(["roof"]);
    expect(answer.nearest).toBeNull();
    expect(answer.reason).toMatch(/No pair at all fits the roof\.$/);
  });

  it.each([
    [{ nights: 0 }, "nights must be a whole number from 1 to 60, got 0"],
    [{ nights: 2.5 }, "nights must be a whole number from 1 to 60, got 2.5"],
    [{ chance: 0 }, "chance must be 0.001 to 1, got 0"],
    [{ chance: NaN }, "chance must be 0.001 to 1, got NaN"],
    [{ months: [] }, "months must name at least one, got none"],
    [{ months: [6, 13] }, "months must be a whole number from 1 to 12, got 13"],
    [{ chemistries: [] }, "chemistries must name at least one, got none"],
    [{ banks: [{ ...bankRung("agm", 1), capacity_Ah: -5 }] }, "banks[0].capacity_Ah must be 1 to 100000, got -5"],
    [{ arrays: [arrayRung(NaN)] }, "arrays[0].watts must be 0 to 100000, got NaN"],
    [{ budget: NaN }, "budget must be 0 to 1000000000000, got NaN"],
    [{ removed_kg: -1 }, "removed_kg must be 0 to 1000000, got -1"],
  ])("refuses %j", (change, message) => {
    expect(() => ask(change)).toThrow(new RangeError(message));
  });
});
