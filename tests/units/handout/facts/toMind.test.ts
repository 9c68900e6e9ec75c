import type { SetupAnswer } from "@stayput/sim";
import { describe, expect, it } from "vitest";
import type { Option } from "../../../../packages/handout/src/facts/options.ts";
import { forCustomer, forFitter } from "../../../../packages/handout/src/facts/toMind.ts";

const none = { hoursFromCutOffTo5C: null, hoursFromCutOffTo8C: null, hoursAbove5C: null };

function option(letter: string, answer: Partial<SetupAnswer>): Option {
  return { letter, answer: { cautions: [], peaks: [], food: none, ...answer } } as unknown as Option;
}
const caution = (code: string, text: string) => ({ code, text });
const peak = (verdict: "ok" | "below-cut-off" | "no-inverter") => ({
  load: "k",
  name: "Kettle",
  draw_A: 1,
  volts_V: 1,
  verdict,
});

describe("what to mind", () => {
  it("says the same thing once, with the letters it is true of", () => {
    const options = [
      option("A", { cautions: [caution("x", "Thin.")] }),
      option("B", { cautions: [caution("x", "Thin.")] }),
    ];
    expect(forCustomer(options)).toEqual([{ letters: ["A", "B"], row: "Thin." }]);
    expect(forFitter(options)).toEqual([{ letters: ["A", "B"], row: "Thin." }]);
  });

  it("gives a customer one line a kind and says whose figures they are; a fitter gets every one", () => {
    const options = [
      option("A", { cautions: [caution("x", "9 A of 50."), caution("x", "8 A of 50.")] }),
      option("D", { cautions: [caution("x", "10 A of 50.")] }),
    ];
    expect(forCustomer(options)).toEqual([{ letters: ["A", "D"], row: "9 A of 50. (A's figures.)" }]);
    expect(forFitter(options).map(({ row }) => row)).toEqual(["9 A of 50.", "8 A of 50.", "10 A of 50."]);
  });

  it("adds the peaks that trip, but not what a caution says already", () => {
    expect(forFitter([option("A", { peaks: [peak("ok"), peak("below-cut-off")] })]).map(({ row }) => row)).toEqual([
      "Kettle pulls the bank under its cut-off at the lowest charge of the stay.",
    ]);
    const said = option("A", {
      peaks: [peak("no-inverter")],
      cautions: [caution("no-inverter", "Kettle cannot run.")],
    });
    expect(forFitter([said]).map(({ row }) => row)).toEqual(["Kettle cannot run."]);
  });

  it.each([
    [0.3, "half an hour"],
    [0.9, "an hour"],
    [2.3, "2.5 h"],
  ])("tells a customer of food %d h after the cut-off: about %s", (hours, about) => {
    const food = { ...none, hoursFromCutOffTo5C: hours };
    expect(forCustomer([option("A", { food })])[0]?.row).toContain(`in about ${about}.`);
    expect(forFitter([option("A", { food })])).toEqual([]);
  });
});
