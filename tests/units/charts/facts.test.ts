import type { ChargeMoment, SetupAnswer, SizeAnswer, UpgradesAnswer } from "@stayput/sim";
import { describe, expect, it } from "vitest";
import * as charts from "@stayput/charts";
import { daySample, runSample, upgradesSample, usesSample, yearSample } from "../../fixtures/charts/samples.ts";

const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("a day of it", () => {
  const table = charts.dayTable(daySample);
  it("keeps every watt-hour: the layers add up to what was given, the rest put together", () => {
    const given = daySample.hours.reduce((total, hour) => total + hour.out.reduce((sum, load) => sum + load.Wh, 0), 0);
    const foot = table.rows.at(-1)!.map((cell) => Number(cell.replaceAll(",", "")));
    const shown = table.columns.reduce((sum, column, i) => sum + (column.includes("(out") ? foot[i]! : 0), 0);
    expect(Math.abs(shown - given)).toBeLessThan(0.5); // seven cells rounded to a tenth
    expect(table.columns.filter((column) => column.includes("(out"))).toHaveLength(7);
    expect(table.columns.at(-1)).toContain("2 others");
  });
  it("names the kinds in and reads out one hour", () => {
    expect(plain(charts.daySummary(daySample))).toMatch(
      /^A day of it: 1,187 Wh in, .* most of it Fridge .*; 132 Wh of sun goes unused\.$/,
    );
    const { heading, lines } = charts.dayReadout(daySample, 10);
    expect(heading).toBe("10:00 to 11:00");
    expect(lines.map(({ name }) => name)).toContain("Road, in");
    expect(charts.dayReadout(daySample, 23).heading).toBe("23:00 to 24:00");
  });
  it("is shaded from sunset to sunrise, and all through in polar night", () => {
    const shaded = (dark: charts.DayPicture["dark"]) => {
      const saved = charts.toSvgText(
        charts.dayChart({ ...daySample, dark }, { width_px: 700, height_px: 320 }),
        "light",
      );
      const rects = saved.matchAll(/<rect [^>]*\bwidth="([\d.]+)"[^>]*fill="#ece5d5"/g);
      return [...rects].reduce((sum, [, width]) => sum + Number(width), 0);
    };
    expect(shaded(null)).toBe(0);
    const half = shaded({ from_h: 18, to_h: 6 });
    expect(half).toBeGreaterThan(100);
    expect(shaded({ from_h: 6, to_h: 18 })).toBeCloseTo(half, 0);
    expect(shaded({ from_h: 12, to_h: 12 })).toBeCloseTo(2 * half, 0);
    expect(shaded({ from_h: 0, to_h: 0 })).toBeCloseTo(2 * half, 0);
  });
  it("refuses a day of more than 24 hours", () => {
    expect(() => charts.dayTable({ hours: [...daySample.hours, daySample.hours[0]!] })).toThrow(/at most 24, got 25/);
  });
});

describe("where it goes", () => {
  it("goes from the largest down, with the days without each", () => {
    const { rows } = charts.usesTable(usesSample);
    expect(rows[0]).toEqual(["Fridge, 188 L", "812", "53%", "60+"]);
    expect(rows.find(([name]) => name === "Lost in charging")?.[3]).toBe("–");
    expect(plain(charts.usesSummary(usesSample))).toContain("without it 60 days or more instead of 2.6 days");
  });
  it("puts the smallest together past twelve in the picture, never in the table", () => {
    const rows = Array.from({ length: 15 }, (_, i) => ({ id: `l${i}`, name: `Load ${i}`, Wh_day: 100 - i }));
    const many = { ...usesSample, rows };
    expect(charts.usesGeometry(many, { width_px: 700, height_px: 300 }).stops).toHaveLength(12);
    expect(charts.usesReadout(many, 11).heading).toBe("4 others");
    expect(charts.usesTable(many).rows).toHaveLength(15);
  });
  it("is made from an answer, losses as rows of their own", () => {
    const answer = {
      name: "Now",
      use_Wh_day: { total: 900, byLoad: [{ id: "fridge", name: "Fridge", Wh_day: 900, share: 1 }] },
      losses_Wh_day: { inverter: 10, charging: 60, selfDischarge: 0 },
      days: { drawn: { p10: 2, p50: 2.5, p90: 3 } },
      without: [{ load: "fridge", name: "Fridge", days: null, daysP50: 41 }],
    } as unknown as SetupAnswer;
    const picture = charts.usesPictureOf(answer, 60);
    expect(picture.rows.map(({ name, without_days }) => [name, without_days])).toEqual([
      ["Fridge", 41],
      ["Lost in charging", undefined],
    ]);
  });
});

describe("round the year", () => {
  it("tells a month's days and chance for each setup", () => {
    const picture = yearSample(2);
    expect(charts.yearTable(picture).rows).toHaveLength(24);
    const { heading, lines } = charts.yearReadout(picture, 7);
    expect(heading).toBe("July");
    expect(lines).toHaveLength(2);
    expect(charts.yearSummary(picture)).toMatch(/As it is from .* in .* to .* in /);
  });
  it("turns a pointer into a month", () => {
    const { plot, positionAt } = charts.yearGeometry(yearSample(2), { width_px: 700, height_px: 300 });
    expect(positionAt(plot.left + 1, 0)).toBe(1);
    expect(positionAt(plot.right - 1, 0)).toBe(12);
    expect(positionAt((plot.left + plot.right) / 2 + 3, 0)).toBe(7);
  });
});

describe("charge run", () => {
  it("gives each drop, and the sum of the drops is the whole", () => {
    const drops = charts
      .runTable(runSample)
      .rows.slice(1)
      .map((row) => Number(plain(row[3]!).replace("\u2212", "-").replace(" V", "")));
    expect(drops.reduce((a, b) => a + b, 0)).toBeCloseTo(14.1 - 14.2, 6);
    expect(plain(charts.runSummary(runSample))).toContain(
      "14.20 V at Alternator, 14.10 V at Bank, 18.5 A into the bank",
    );
  });
  it("is made from a moment of an answer", () => {
    const moment = {
      points: [{ name: "alternator", volts_V: 14.2, amps_A: 15, heat_W: 0 }],
      delivered_A: 14.6,
      limit: { name: "tow plug", value: 15, unit: "A" },
    } as unknown as ChargeMoment;
    const picture = charts.runPictureOf(moment, { minimum_V: 12 });
    expect(picture).toMatchObject({ amps: 14.6, minimum_V: 12, points: [{ label: "alternator", volts: 14.2 }] });
    expect(plain(picture.limitedBy)).toBe("tow plug, 15 A");
  });
});

describe("what would change it", () => {
  it("names the change that gives most, and each alone", () => {
    expect(plain(charts.upgradesSummary(upgradesSample))).toContain(
      "from 2.6 days to 11 days with all changes; Another 200 W on the roof gives most, +4.1 days",
    );
    expect(charts.upgradesReadout(upgradesSample, 0).heading).toBe("As it is");
    expect(charts.upgradesReadout(upgradesSample, 2).lines[0]?.value).toBe("+4.1 days");
    expect(charts.upgradesReadout(upgradesSample, 5).heading).toBe("All together");
  });
  it("is made from an answer; days at the horizon did not end", () => {
    const answer: UpgradesAnswer = {
      from: "now",
      to: "new",
      changes: [{ id: "bank", text: "bank: larger" }],
      days: { before: 2.5, after: 60, alone: [60], shares: [57.5] },
      dullDays: { before: 2, after: 9, alone: [9], shares: [7] },
      chance: { before: 0, after: 1, alone: [1], shares: [1] },
      horizon_days: 60,
      measure: "days",
      said: "",
    };
    expect(charts.upgradesPictureOf(answer)).toEqual({
      from_days: 2.5,
      together_days: null,
      horizon_days: 60,
      changes: [{ id: "bank", name: "bank: larger", share_days: 57.5, alone_days: null }],
    });
  });
});

it("takes every corner of every staircase as a size to choose", () => {
  const corner = (bank_Ah: number) => ({
    chemistry: "lfp" as const,
    bank_Ah,
    array_W: 300,
    chance: 0.9,
    price: null,
    mass_kg: null,
  });
  const answer = {
    nights: 4,
    chance: 0.9,
    staircases: [{ corners: [corner(100), corner(200)] }, { corners: [corner(300)] }],
  } as unknown as SizeAnswer;
  const picture = charts.sizePictureOf(answer, null, [], "AUD");
  expect(picture.points.map(({ bank_Ah }) => bank_Ah)).toEqual([100, 200, 300]);
  expect(picture.asked).toEqual({ nights: 4, chance: 0.9 });
});

it("follows a reader's own way of writing figures", () => {
  const saved = charts.toSvgText(
    charts.usesChart(usesSample, { width_px: 700, height_px: 300, format: (n) => `${n} units` }),
    "light",
  );
  expect(saved).toContain("812 units");
});
