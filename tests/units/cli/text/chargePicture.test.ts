import { describe, expect, it } from "vitest";
import { chargePicture } from "../../../../apps/cli/src/text/chargePicture.ts";
import { answerOf, lithium, tired } from "../sample.ts";

const steady = (charge: number): number[] => Array.from({ length: 1440 }, () => charge);
const flatBand = (p10: number, p50: number, p90: number) => ({
  ...tired,
  charge: { p10: steady(p10), p50: steady(p50), p90: steady(p90), average: steady(p50), dark: steady(0) },
});

describe("the picture of charge", () => {
  it("has a row for each tenth of charge and one for the days, all within 80 columns", () => {
    const lines = chargePicture(answerOf(tired, lithium));
    expect(lines).toHaveLength(12);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
    expect(lines[0]).toMatch(/^ 100 %/);
    expect(lines[10]).toMatch(/^ {3}0 %/);
    expect(lines[11]).toMatch(/^ {7}0 {7}1 {7}2/); // three hours a column: eight columns a day
  });

  it("puts a charge on its row and the span of skies around it", () => {
    const lines = chargePicture(answerOf(flatBand(0.2, 0.5, 0.8)));
    expect(lines.map((line) => line[7])).toEqual([" ", " ", ":", ":", ":", "A", ":", ":", ":", " ", " ", "0"]);
  });

  it("stars where two setups meet and letters where they do not", () => {
    const meeting = chargePicture(answerOf(flatBand(0, 0.5, 1), flatBand(0, 0.5, 1), flatBand(0, 0.1, 1)));
    expect(meeting[5]).toMatch(/^ {7}\*+$/);
    expect(meeting[9]).toMatch(/^ {7}C+$/);
  });

  it("dots the nights: from 18:00, three hours after arrival, for twelve hours", () => {
    const empty = chargePicture(answerOf(flatBand(0, 0, 0)));
    expect(empty[3]?.slice(7, 7 + 12)).toBe(" ....    ...");
  });

  it("goes on until the middle sky of a setup that outlasts the stay has it flat, but no further than two stays", () => {
    const at = (p50: number | null) => {
      const setup = { ...tired, days: { ...tired.days, drawn: { p10: 1, p50, p90: null } } };
      return Number(chargePicture(answerOf(setup)).at(-1)?.trim().split(/\s+/).at(-1));
    };
    expect(at(2)).toBe(6);
    expect(at(9.2)).toBe(10);
    expect(at(40)).toBe(12);
    expect(at(null)).toBe(6);
  });
});
