import { describe, expect, it } from "vitest";
import { match } from "../../../../packages/sim/src/answers/match.ts";
import { posteriorOf } from "../../../../packages/sim/src/answers/matchPosterior.ts";
import { morningOf } from "../../../../packages/sim/src/answers/matchSeen.ts";
import type { Observation } from "../../../../packages/sim/src/answers/matchTypes.ts";
import { familyFridge, lamp } from "../../../fixtures/loads.ts";
import { dryTropics, lithium, setup, study, tiredAgm, twoAgm } from "../../../fixtures/stays.ts";

const skies = { seed: 1, draws: 40 };
const seen = (flatOnMorning: number, month = 6): Observation => ({
  flatOnMorning,
  month,
  day: 10,
  climate: dryTropics,
});
const ask = (fitted: ReturnType<typeof setup>, ...mornings: Observation[]) =>
  match(study([fitted]), fitted, mornings, skies);

describe("match", () => {
  it("puts each moment of going flat on the morning on which it is found", () => {
    // Arrival at 15:00, looked at by 9:00: the first morning is 18 h after arrival.
    expect(morningOf(17.9)).toBe(1);
    expect(morningOf(18)).toBe(2);
    expect(morningOf(41.9)).toBe(2);
    expect(morningOf(65)).toBe(3);
  });

  it("leaves the job alone where it explains what was seen", () => {
    const answer = ask(setup(tiredAgm, 0), seen(2));
    expect(answer.asStated).toBe(1);
    expect(answer.said).toContain(
      "would be found flat on the 2nd morning in June in every trip. Nothing need be other than stated. It would also happen where",
    );
    const condition = answer.explanations.find(({ id }) => id === "condition")!;
    expect(condition.likely!.low).toBeLessThan(0.6);
    expect(condition.likely!.high).toBeGreaterThan(0.6);
  });

  it("holds that a strong setup flat on the first morning has a dying battery, and says so", () => {
    const { explanations, said } = ask(setup(twoAgm, 300), seen(1));
    expect(explanations[0]!.id).toBe("condition");
    expect(explanations[0]!.likely!.high).toBeLessThan(0.5);
    expect(said).toMatch(
      /^As the job stands, the bank would be found flat on the 1st morning in June in no trip; it always lasts longer\. Most plausible: the bank has about \d\d % of its rated capacity left \(\d\d to \d\d %\)\.$/,
    );
  });

  it("says so where nothing that it asks explains it, whichever way it is off", () => {
    const light = [{ ...lamp, watts: 1 }];
    const sooner = ask(setup({ ...lithium, capacity_Ah: 400 }, 400, light), seen(1));
    expect(sooner.explanations.every(({ likely, plausibility }) => likely === null && plausibility === 0)).toBe(true);
    expect(sooner.said).toContain("The bank's real condition and shade or dirt on the panels do not explain it");
    expect(sooner.said).toContain("went flat sooner than they would make it");
    const heavy = [{ ...lamp, watts: 400, use: [{ from: 0, to: 24, duty: 1, everyDays: 1 }] }];
    expect(ask(setup(twoAgm, 0, heavy), seen(9)).said).toContain("lasted longer than that would let it");
  });

  it("asks nothing of a fridge that is not there, nor of panels", () => {
    const ids = ask(setup(twoAgm, 0, [lamp]), seen(4)).explanations.map(({ id }) => id);
    expect(ids).toEqual(["condition"]);
  });

  it("asks of the smallest fridge too, of which half would be less than its controls take", () => {
    const cooler = { ...familyFridge, rated_Wh_day: 30 };
    const ids = ask(setup(twoAgm, 0, [cooler]), seen(40)).explanations.map(({ id }) => id);
    expect(ids).toContain("fridge");
  });

  it("shares the skies between before, then and after; weighs several mornings together", () => {
    const answer = ask(setup(tiredAgm, 200), seen(3), seen(4, 7));
    for (const { before, then, after } of answer.stated) expect(before + then + after).toBeCloseTo(1, 12);
    expect(answer.asStated).toBeCloseTo(answer.stated[0]!.then * answer.stated[1]!.then, 12);
    expect(answer.explanations.reduce((sum, { plausibility }) => sum + plausibility, 0)).toBeCloseTo(1, 12);
  });

  it.each([
    [[], "match must name at least one morning on which the bank was flat, got none"],
    [[seen(0)], "match[0].flatOnMorning must be a whole number from 1 to 60, got 0"],
    [[seen(3), seen(2.5)], "match[1].flatOnMorning must be a whole number from 1 to 60, got 2.5"],
    [[seen(NaN)], "match[0].flatOnMorning must be a whole number from 1 to 60, got NaN"],
    [[seen(3, 13)], "match[0].month must be a whole number from 1 to 12, got 13"],
  ])("refuses %j", (mornings, message) => {
    expect(() => ask(setup(twoAgm, 100), ...mornings)).toThrow(new RangeError(message));
  });
});

describe("posteriorOf", () => {
  const values = [0.5, 1.5, 2.5, 3.5];
  it.each([
    ["evenly spread: all of it", [1, 1, 1, 1], { low: 0, middle: 2, high: 4 }],
    ["in one cell: a quarter to either side", [0, 0, 8, 0], { low: 1, middle: 2.5, high: 4 }],
    ["at one end: that end is inside", [0, 0, 0, 8], { low: 2, middle: 3 + 1 / 3, high: 4 }],
  ])("finds the middle and the shortest range, weights %s", (_, weights, expected) => {
    const got = posteriorOf(values, weights)!;
    for (const key of ["low", "middle", "high"] as const) expect(got[key]).toBeCloseTo(expected[key], 9);
  });

  it("finds none where nothing has weight", () => {
    expect(posteriorOf(values, [0, 0, 0, 0])).toBeNull();
  });
});
