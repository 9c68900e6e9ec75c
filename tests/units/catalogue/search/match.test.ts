import { describe, expect, it } from "vitest";
import { fold } from "../../../../packages/catalogue/src/search/fold.ts";
import { ranked, search } from "../../../../packages/catalogue/src/search/match.ts";

describe("fold", () => {
  it.each([
    ["Łódź", "lodz"],
    ["Ma'an (Petra/Wadi Rum area)", "maan petra wadi rum area"],
    ["  São   Tomé ", "sao tome"],
    ["Straße", "strasse"],
    ["Tromsø", "tromso"],
    ["3-way", "3 way"],
  ])("%s", (text, folded) => expect(fold(text)).toBe(folded));
});

describe("search", () => {
  const row = (title: string, ...others: string[]) => ({ title, others });
  const rows = [row("nether wallop"), row("walloping", "uk"), row("great wall", "china"), row("alice springs", "au")];
  const found = (typed: string) => search(rows, typed).map(({ title }) => title);

  it.each([
    ["wall", ["walloping", "nether wallop", "great wall"]], // start, then start of a word, in the order given
    ["uk", ["walloping"]],
    ["chi", ["great wall"]],
    ["rings", ["alice springs"]],
    ["ri", []], // two letters inside a word say nothing
    ["springs alice", ["alice springs"]],
    ["alice perth", []],
    ["alise", ["alice springs"]],
    ["alise sprngs", ["alice springs"]],
    ["grate", []], // two slips in five letters
    ["grea", ["great wall"]],
  ])("%s", (typed, titles) => expect(found(typed)).toEqual(titles));

  it("offers near spellings only where nothing else is met", () => {
    expect(found("walle")).toEqual(["nether wallop", "walloping", "great wall"]);
    expect(found("wallo")).toEqual(["walloping", "nether wallop"]);
  });
});

describe("ranked", () => {
  it("puts the lowest first, keeps the order of equals and leaves out the infinite", () => {
    expect(ranked([3, 1, Infinity, 2, 1.5], (score) => Math.floor(score))).toEqual([1, 1.5, 2, 3]);
  });
});
