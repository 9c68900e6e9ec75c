import { describe, expect, it } from "vitest";
import {
  dateSaid,
  drivingSaid,
  massChangeSaid,
  momentSaid,
  monthDaySaid,
  outOf100,
  priceSaid,
} from "../../../../packages/handout/src/words/figures.ts";

const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, " ");

describe("figures on paper", () => {
  it.each([
    [4350, "AUD", "en-AU", "$4,350"],
    [41500, "ZAR", "en-US", "ZAR 41,500"],
    [2450, "EUR", "de-DE", "2.450 €"],
    [890.5, "EUR", "en-GB", "€890.50"],
    [1480, null, "en-GB", "1,480"],
    [125000, "JPY", "en-US", "¥125,000"],
  ])("price %d %s in %s: %s", (price, currency, locale, said) =>
    expect(plain(priceSaid(price, currency, locale))).toBe(said),
  );

  it.each([
    [15, "+15 kg"],
    [-18.4, "−18 kg"],
    [0, "0 kg"],
    [-0.3, "0 kg"],
  ])("mass %d: %s", (mass_kg, said) => expect(plain(massChangeSaid(mass_kg, "en"))).toBe(said));

  it.each([
    [0, 200, "under 1 in 100"],
    [1, 200, "over 99 in 100"],
    [0, 20, "under 5 in 100"],
    [1, 20, "over 95 in 100"],
    [0.87, 200, "87 in 100"],
    [0.005, 200, "1 in 100"],
    [0.995, 200, "99 in 100"],
  ])("a share of %d of %d skies: %s", (share, draws, said) => expect(outOf100(share, draws)).toBe(said));

  it.each([
    [null, "not in 48 h"],
    [0.1, "at once"],
    [4.14, "4.1 h"],
    [5.33, "5.3 h"],
    [12.9, "13 h"],
  ])("driving for %s: %s", (hours, said) => expect(plain(drivingSaid(hours, "en"))).toBe(said));

  it("a moment stands in a sentence", () => {
    expect(momentSaid(2.37)).toBe("in night 3 about 23:50");
    expect(momentSaid(0.05)).toBe("on arrival day about 16:10");
    expect(momentSaid(4.67)).toBe("after night 5 about 07:00");
  });

  it("a day in the reader's words", () => {
    expect(dateSaid("2026-11-02", "en-GB")).toBe("2 November 2026");
    expect(dateSaid("2024-02-29", "de")).toBe("29. Februar 2024");
  });
  it("a month in a sentence is in the sentence's language", () => {
    expect(monthDaySaid(7, 20, "de")).toBe("20 July");
    expect(monthDaySaid(2, 29, "en-US")).toBe("February 29");
  });
  it.each(["2026-02-30", "2026-13-01", "02/11/2026", "", "2026-11-02T00:00"])("refuses %j as a day", (date) =>
    expect(() => dateSaid(date, "en")).toThrow(/^date must be a day as "YYYY-MM-DD"/),
  );
});
