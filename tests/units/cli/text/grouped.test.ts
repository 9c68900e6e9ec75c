import { describe, expect, it } from "vitest";
import { assumedOf, grouped } from "../../../../apps/cli/src/text/grouped.ts";

describe("what is said of several setups", () => {
  it("is said once, with the letters of those that it is said of", () => {
    expect(grouped([["x", "y"], ["y"], []])).toEqual(["- A: x", "- A, B: y"]);
    expect(grouped([["x"], ["x"]], ["A", "D"])).toEqual(["- A, D: x"]);
  });

  it("has no letter where there is one setup", () => expect(grouped([["x", "x"]])).toEqual(["- x"]));

  it("takes notes by the names that they begin with, the longest that fits", () => {
    const setups = [{ name: "Now" }, { name: "Now: better" }];
    const notes = ["a general note", "Now: 6 mm is taken as 4.6 mm²", "Now: better: 6 mm is taken as 4.6 mm²"];
    expect(assumedOf(notes, setups)).toEqual(["- A, B: 6 mm is taken as 4.6 mm²", "- a general note"]);
  });
});
