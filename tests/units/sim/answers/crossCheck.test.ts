import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crossCheck } from "../../../../packages/sim/src/answers/crossCheck.ts";
import { handbookSize } from "../../../../packages/sim/src/answers/handbook.ts";
import { lossOfLoad } from "../../../../packages/sim/src/answers/lossOfLoad.ts";
import type { Climate } from "../../../../packages/sim/src/study.ts";
import { lamp } from "../../../fixtures/loads.ts";
import { dryTropics, lithium, openCamp, setup, study, twoAgm } from "../../../fixtures/stays.ts";

describe("lossOfLoad", () => {
  it("meets the closed form of the walk for any store and any share of sunny days", () => {
    // Reflecting walk of ±1: (1−p)(1−r)/(1−r^(N+1)), r = p/(1−p).
    const store = fc.integer({ min: 1, max: 30 });
    const sunny = fc.integer({ min: 20, max: 80 }).filter((percent) => percent !== 50);
    fc.assert(
      fc.property(store, sunny, (N, percent) => {
        const p = percent / 100;
        const r = p / (1 - p);
        const closed = ((1 - p) * (1 - r)) / (1 - r ** (N + 1));
        const got = lossOfLoad(N, [
          { steps: 1, chance: p },
          { steps: -1, chance: 1 - p },
        ]);
        expect(Math.abs(got - closed)).toBeLessThan(1e-8);
      }),
    );
  });

  it("is nothing where every day fills the store, all where every day empties it, and settles where days take turns", () => {
    expect(lossOfLoad(5, [{ steps: 1, chance: 1 }])).toBe(0);
    expect(lossOfLoad(5, [{ steps: -1, chance: 1 }])).toBeCloseTo(1, 9);
    expect(lossOfLoad(5, [{ steps: 0, chance: 1 }])).toBe(0);
    const turns = [
      { steps: 1, chance: 0.5 },
      { steps: -1, chance: 0.5 },
    ];
    expect(lossOfLoad(1, turns)).toBeCloseTo(1 / 4, 9);
  });

  it.each([
    [0, [{ steps: 1, chance: 1 }], "store_steps must be a whole number from 1 to 500, got 0"],
    [3, [{ steps: 0.5, chance: 1 }], "changes[0].steps must be a whole number"],
    [3, [{ steps: 1, chance: 0.5 }], "changes: chances must sum to 1, got 0.5"],
    [3, [], "changes: chances must sum to 1, got 0"],
  ])("refuses a store of %j with %j", (store, changes, message) => {
    expect(() => lossOfLoad(store, changes)).toThrow(message);
  });
});

describe("crossCheck", () => {
  const ask = (bank_Ah: number, array_W: number, autonomy = 3) =>
    crossCheck(study([]), setup(twoAgm, 300), { chemistry: "agm", bank_Ah, array_W }, autonomy, {
      seed: 1,
      draws: 30,
    })!;

  it("reads loads at the loads, and leaves the inverter to the handbook's efficiency", () => {
    const use = [{ from: 10, to: 12, duty: 1, everyDays: 1 }];
    const loads = [
      { ...lamp, id: "a", watts: 30, use },
      { ...lamp, id: "b", supply: "ac" as const, watts: 100, use },
    ];
    const fitted = {
      ...setup(twoAgm, 300, loads),
      inverter: { rated_W: 1000, surge_W: 2000, idle_W: 10, peakEfficiency: null, on: "in-use" as const },
    };
    const answer = crossCheck(study([]), fitted, { chemistry: "agm", bank_Ah: 200, array_W: 300 }, 2)!;
    expect(answer.inputs.dc_Wh_day).toBeCloseTo(60, 9);
    expect(answer.inputs.ac_Wh_day).toBeCloseTo(200, 9);
    expect(answer.handbook).toEqual(handbookSize(answer.inputs));
    expect(answer.standing).toBe("from memory");
  });

  it("holds both pairs to the trip and to the long run: the larger pair falls short less", () => {
    const answer = ask(100, 150);
    expect(answer.held.handbook.chance).toBeGreaterThan(answer.held.simulated.chance);
    expect(answer.held.handbook.shortDays).toBeLessThan(answer.held.simulated.shortDays);
    expect(answer.said).toHaveLength(4);
    expect(answer.said[0]).toMatch(
      /^Bank: the simulation asks less than the handbook's \d+ Ah\. The handbook carries 3 days without any sun/,
    );
    expect(answer.said.join(" ")).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("says what shade takes, which the handbook does not know of", () => {
    const shaded = { ...openCamp, shade: [{ from: 0, to: 24, lost: 0.4 }] };
    const { said } = crossCheck(
      study([], shaded),
      setup(twoAgm, 300),
      { chemistry: "agm", bank_Ah: 200, array_W: 300 },
      3,
    )!;
    expect(said[1]).toContain("The handbook knows of no shade; at this camp it takes about 40 % of the sun.");
    expect(ask(100, 150).said[1]).not.toContain("shade");
  });

  it("has no handbook's answer in polar night, and for more use than a bank can carry", () => {
    const far: Climate = { ...dryTropics, latitude_deg: 71, ghi_kWh_m2_day: dryTropics.ghi_kWh_m2_day.map(() => 0) };
    const asked = study([], { ...openCamp, month: 12, day: 15 }, far);
    expect(crossCheck(asked, setup(twoAgm, 300), { chemistry: "agm", bank_Ah: 200, array_W: 300 }, 3)).toBeNull();
    const oven = { ...lamp, id: "oven", watts: 20_000, count: 100, use: [{ from: 0, to: 24, duty: 1, everyDays: 1 }] };
    const pair = { chemistry: "agm", bank_Ah: 100, array_W: 100 } as const;
    expect(crossCheck(study([]), setup(twoAgm, 300, [oven]), pair, 3)).toBeNull();
  });

  it.each([
    [() => ask(100, 100, 0), "autonomy_days must be 0.1 to 60, got 0"],
    [
      () => crossCheck(study([]), setup(lithium, 1), { chemistry: "lead" as "agm", bank_Ah: 1, array_W: 1 }, 1),
      "simulated.chemistry must be one of agm, gel, flooded, lfp, got lead",
    ],
    [
      () =>
        crossCheck(
          study([], { ...openCamp, nights: 0 }),
          setup(twoAgm, 1),
          { chemistry: "agm", bank_Ah: 1, array_W: 1 },
          1,
        ),
      "horizon_days must be 1 to 366, got 0",
    ],
  ])("refuses bad input, case %#", (bad, message) => {
    expect(bad).toThrow(message);
  });
});
