import type { Days, SetupAnswer } from "@stayput/sim";
import { describe, expect, it } from "vitest";
import { dullWeeks } from "../../../../packages/handout/src/facts/dullWeeks.ts";
import type { Option } from "../../../../packages/handout/src/facts/options.ts";

type Use = readonly [id: string, Wh_day: number, daysP50: Days, kind?: "compressor-fridge"];

/** What the list is made from, and nothing else of an option. */
function option(p50: Days, uses: readonly Use[]): Option {
  const answer = {
    use_Wh_day: { total: 0, byLoad: uses.map(([id, Wh_day]) => ({ id, name: id, Wh_day, share: 0 })) },
    days: { dark: null, average: null, drawn: { p10: null, p50, p90: null } },
    without: uses.map(([load, , daysP50]) => ({ load, name: load, days: null, daysP50 })),
  } as Partial<SetupAnswer>;
  const loads = uses.map(([id, , , kind]) => ({ id, kind: kind ?? "appliance" }));
  return { letter: "A", answer, setup: { loads } } as unknown as Option;
}

const uses: readonly Use[] = [
  ["lamp", 60, 2.6],
  ["fridge", 900, null, "compressor-fridge"],
  ["fan", 300, 3.5],
  ["off", 0, 2.4],
];

describe("what to leave off", () => {
  it("lists what draws by size, fridges last, and what each buys every option", () => {
    const { leftOff, smaller } = dullWeeks([
      option(2.4, uses),
      option(9, [
        ["fan", 300, 12],
        ["heater", 500, 11],
      ]),
    ]);
    expect(leftOff.map(({ id, days }) => [id, ...days])).toEqual([
      ["heater", undefined, 11],
      ["fan", 3.5, 12],
      ["lamp", 2.6, undefined],
      ["fridge", null, undefined],
    ]);
    expect(smaller).toBe(0);
  });

  it("says which to leave off first: the one that buys most, a fridge never", () => {
    const { first } = dullWeeks([option(2.4, uses)]);
    expect(first?.name).toBe("fan");
    expect(first?.buys_days).toBeCloseTo(1.1, 9);
  });

  it.each([
    ["it never runs down", [option(null, uses)]],
    ["nothing buys a tenth of a day", [option(2.4, [["lamp", 60, 2.42]])]],
    ["only a fridge draws", [option(2.4, [["fridge", 900, 9, "compressor-fridge"]])]],
    ["there is no option", []],
  ] as const)("names none where %s", (_why, options) => expect(dullWeeks(options).first).toBeNull());

  it("counts what it has no room for", () => {
    const many = Array.from({ length: 9 }, (_, i): Use => [`load-${i}`, 10 + i, 3]);
    const { leftOff, smaller } = dullWeeks([option(2.4, many)]);
    expect([leftOff.length, smaller, leftOff[0]!.id]).toEqual([5, 4, "load-8"]);
  });
});
