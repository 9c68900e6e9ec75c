import { describe, expect, it } from "vitest";
import { runShare } from "../../../../packages/sim/src/loads/index.ts";
import type { Use } from "../../../../packages/sim/src/study.ts";
import { lamp, steady, sum } from "../../../fixtures/loads.ts";

const mild = steady(20, 96);
const shareOf = (use: Use[], air_C = mild): Float64Array => runShare({ ...lamp, use }, air_C);
/** Where a clock hour of a day since arrival stands in a stay. */
const at = (day: number, clock: number): number => 24 * day + clock - 15;

describe("the hours of a stay", () => {
  it("count from 15:00: an evening window starts three hours in", () => {
    const share = shareOf([{ from: 18, to: 22.5, duty: 1, everyDays: 1 }]);
    expect([...share.slice(0, 9)]).toEqual([0, 0, 0, 1, 1, 1, 1, 0.5, 0]);
    expect(share[at(1, 18)]).toBe(1);
  });
  it("take fractions at both edges, and the duty", () => {
    const share = shareOf([{ from: 18.25, to: 19.5, duty: 0.4, everyDays: 1 }]);
    expect(share[3]).toBeCloseTo(0.3, 12);
    expect(share[4]).toBeCloseTo(0.2, 12);
  });
  it("leave out what was over before arrival", () => {
    const share = shareOf([{ from: 6, to: 8, duty: 1, everyDays: 1 }]);
    expect(share[0]).toBe(0);
    expect(share[at(1, 6)]).toBe(1);
    expect(sum(share)).toBe(8); // mornings of days 1 to 4, each inside 96 h from 15:00
  });
  it("run all day from 0 to 24", () =>
    expect([...shareOf([{ from: 0, to: 24, duty: 1, everyDays: 1 }])]).toEqual([...steady(1, 96)]));
  it("an empty window never runs", () => expect(sum(shareOf([{ from: 9, to: 9, duty: 1, everyDays: 1 }]))).toBe(0));
});

describe("past midnight", () => {
  it("a window belongs to the day on which it starts", () => {
    const share = shareOf([{ from: 22, to: 2, duty: 1, everyDays: 2 }]);
    expect([at(0, 22), at(0, 23), at(1, 0), at(1, 1)].map((i) => share[i])).toEqual([1, 1, 1, 1]);
    expect([at(1, 22), at(2, 0), at(2, 1)].map((i) => share[i])).toEqual([0, 0, 0]);
    expect([at(2, 22), at(3, 1)].map((i) => share[i])).toEqual([1, 1]);
  });
  it("a daily window that wraps round arrival is running on arrival", () => {
    const share = shareOf([{ from: 20, to: 16.5, duty: 1, everyDays: 1 }]);
    expect([...share.slice(0, 6)]).toEqual([1, 0.5, 0, 0, 0, 1]);
  });
  it("minutes at the end of a day run on", () => {
    const share = shareOf([{ at: 23.75, minutes: 30, everyDays: 1 }]);
    expect(share[at(0, 23)]).toBeCloseTo(0.25, 12);
    expect(share[at(1, 0)]).toBeCloseTo(0.25, 12);
  });
});

describe("every n-th day", () => {
  it("counts from the day of arrival", () => {
    const share = shareOf([{ at: 17, minutes: 60, everyDays: 3 }], steady(20, 24 * 7));
    expect([0, 1, 2, 3, 4, 5, 6].map((day) => share[at(day, 17)])).toEqual([1, 0, 0, 1, 0, 0, 1]);
  });
  it("a morning use of the day of arrival is already past", () => {
    const share = shareOf([{ at: 6, minutes: 60, everyDays: 2 }]);
    expect([1, 2, 3].map((day) => share[at(day, 6)])).toEqual([0, 1, 0]);
  });
});

describe("overlap", () => {
  it("adds duties, never above 1, moment by moment", () => {
    const half: Use = { from: 18, to: 18.5, duty: 1, everyDays: 1 };
    expect(shareOf([half, half])[3]).toBeCloseTo(0.5, 12);
    const low: Use = { from: 18, to: 19, duty: 0.3, everyDays: 1 };
    expect(shareOf([low, low])[3]).toBeCloseTo(0.6, 12);
    expect(shareOf([low, { from: 18.5, to: 19, duty: 0.9, everyDays: 1 }])[3]).toBeCloseTo(0.15 + 0.5, 12);
  });
});

describe("the outside gate", () => {
  const air_C = Float64Array.from([24, 26, 26.1, 30]);
  const always: Use[] = [{ from: 0, to: 24, duty: 1, everyDays: 1 }];
  const gated = (outside: { above_C?: number; below_C?: number }): number[] => [
    ...runShare({ ...lamp, use: always, outside }, air_C),
  ];
  it("opens above", () => expect(gated({ above_C: 26 })).toEqual([0, 0, 1, 1]));
  it("opens below", () => expect(gated({ below_C: 26 })).toEqual([1, 0, 0, 0]));
  it("needs both where both are given", () => expect(gated({ above_C: 25, below_C: 28 })).toEqual([0, 1, 1, 0]));
  it("is open where nothing is said", () => expect(gated({})).toEqual([1, 1, 1, 1]));
});

describe("bad input is named", () => {
  it.each<[string, Use]>([
    ["use[0].from must be 0 to 24, got -1", { from: -1, to: 2, duty: 1, everyDays: 1 }],
    ["use[0].to must be 0 to 24, got NaN", { from: 1, to: NaN, duty: 1, everyDays: 1 }],
    ["use[0].duty must be 0 to 1, got 1.5", { from: 1, to: 2, duty: 1.5, everyDays: 1 }],
    ["use[0].everyDays must be a whole number from 1, got 0", { from: 1, to: 2, duty: 1, everyDays: 0 }],
    ["use[0].everyDays must be a whole number from 1, got 1.5", { at: 1, minutes: 2, everyDays: 1.5 }],
    ["use[0].at must be 0 to 24, got 25", { at: 25, minutes: 2, everyDays: 1 }],
    ["use[0].minutes must be 0 to 1440, got -5", { at: 2, minutes: -5, everyDays: 1 }],
  ])("%s", (message, use) => expect(() => shareOf([use])).toThrow(new RangeError(`lamp: ${message}`)));
  it("a temperature that is not a number", () =>
    expect(() => shareOf([], Float64Array.of(20, NaN))).toThrow("lamp: air_C[1] must be -90 to 120, got NaN"));
});
