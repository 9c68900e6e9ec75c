import { describe, expect, it } from "vitest";
import { chanceCell, daysCell, daysSaid, hoursSaid, whole } from "../../../../apps/cli/src/text/numbers.ts";

describe("numbers in words", () => {
  it.each([
    [null, "60+", "60 days or more"],
    [0, "0.0", "0.0 days"],
    [0.96, "1.0", "1.0 day"],
    [2.94, "2.9", "2.9 days"],
    [31.6, "32", "32 days"],
  ])("days %s are %s in a table and %s in a sentence", (days, cell, said) => {
    expect(daysCell(days, 60)).toBe(cell);
    expect(daysSaid(days, 60)).toBe(said);
  });

  it("does not call never or always what the draws cannot tell from it", () => {
    expect(chanceCell(0, 200)).toBe("< 1 %");
    expect(chanceCell(1, 200)).toBe("> 99 %");
    expect(chanceCell(1, 20)).toBe("> 95 %");
    expect(chanceCell(0.995, 200)).toBe("99 %");
    expect(chanceCell(0.035, 200)).toBe("4 %");
    expect([chanceCell(0, 1), chanceCell(1, 2)]).toEqual(["0 of 1", "2 of 2"]);
  });

  it("says hours with no more digits than they are worth", () => {
    expect([0, 0.84, 9.96, 14.2].map(hoursSaid)).toEqual(["at once", "0.8 h", "10 h", "14 h"]);
  });

  it("has no minus zero", () => expect(whole(-0.2)).toBe("0"));
});
