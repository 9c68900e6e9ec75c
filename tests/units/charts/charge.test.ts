import type { ExplainAnswer, SetupAnswer } from "@stayput/sim";
import { describe, expect, it } from "vitest";
import {
  chargeChart,
  chargeGeometry,
  chargePictureOf,
  chargeReadout,
  chargeSummary,
  chargeTable,
  toSvgText,
  type ChargePicture,
} from "@stayput/charts";
import { chargeAt, chargeSpan_days, nightSpans } from "../../../packages/charts/src/charge/chargeScale.ts";
import { attributesOf } from "./xml.ts";

const plain = (text: string) => text.replaceAll("\u00a0", " ");
const flat = (hours: number) => Array.from({ length: hours + 1 }, (_, h) => 1 - h / hours);
const one = (p50: number | null, nights = 3, hours = 24 * 60): ChargePicture => ({
  setups: [
    {
      id: "now",
      name: "Now",
      charge: { p10: flat(hours), p50: flat(hours), p90: flat(hours), average: flat(hours), dark: flat(hours) },
      days: { p10: p50, p50, p90: p50 },
      reserve: 0.5,
      foodPasses5C_days: p50 === null ? null : p50 + 1 / 24,
    },
  ],
  nights,
  horizon_days: 60,
});

describe("the span drawn", () => {
  it.each([
    ["the trip and a little", null, 3, 4],
    ["a cut-off on the first day", 0.3, 3, 4],
    ["a cut-off soon after the trip", 4.2, 3, 5],
    ["a cut-off far beyond", 25, 3, 6],
    ["one night", null, 1, 2],
    ["the whole horizon", null, 60, 60],
  ])("covers %s", (_what, p50, nights, days) => expect(chargeSpan_days(one(p50, nights))).toBe(days));
});

it("shades the nights between sunset and sunrise, the first from the evening of arrival", () => {
  // arrival 15:00, dark 18:00 to 06:00: 3 h to 15 h after arrival
  expect(nightSpans(one(null), 2)).toEqual([
    [3 / 24, 15 / 24],
    [27 / 24, 39 / 24],
  ]);
  expect(nightSpans({ ...one(null), dark: null }, 2)).toEqual([]);
  expect(nightSpans({ ...one(null), dark: { from_h: 0, to_h: 0 } }, 1)).toEqual([
    [0, 9 / 24],
    [9 / 24, 1],
  ]);
});

it("reads a value between two hours, and none where there is none", () => {
  expect(chargeAt([1, 0.5], 0.5 / 24)).toBe(0.75);
  expect(chargeAt([1, 0.5], 9)).toBe(0.5);
  expect(chargeAt([], 1)).toBeNull();
});

it("says the cut-off and the food's hour in words on the picture, in the summary and in the table", () => {
  const picture = one(2.57);
  const saved = toSvgText(chargeChart(picture, { width_px: 700, height_px: 300 }), "light");
  expect(saved).toContain("flat night 3, 04:40");
  expect(saved).toContain("food past 5 °C at 05:40");
  expect(plain(chargeSummary(picture))).toBe("How long it lasts: Now lasts 2.6 days, flat night 3, 04:40.");
  expect(chargeTable(picture).rows[0]?.slice(0, 7)).toEqual([
    "Now",
    "2.6",
    "2.6",
    "2.6",
    "night 3, 04:40",
    "night 3, 05:40",
    "50%",
  ]);
});

it("keeps the axis at 0 to 100 % however little the charge moves", () => {
  const { plot } = chargeGeometry(one(null), { width_px: 700, height_px: 300 });
  const saved = toSvgText(chargeChart(one(null), { width_px: 700, height_px: 300 }), "light");
  const start = attributesOf(saved, "path", "d").filter((d) => d.startsWith(`M${plot.left},${plot.top}L`));
  expect(start.length).toBeGreaterThan(0); // full stands at the very top of the plot
});

it("turns a pointer into the nearest hour", () => {
  const { plot, positionAt, stops } = chargeGeometry(one(null), { width_px: 700, height_px: 300 });
  expect(positionAt(plot.left - 40, 0)).toBe(0);
  expect(positionAt(plot.right + 40, 0)).toBe(stops.at(-1));
  expect(positionAt(plot.left + (plot.right - plot.left) / 4, 0)).toBe(1); // four days drawn
  expect(chargeReadout(one(null, 3, 96), 1).lines).toEqual([{ name: "Now", value: "75% (75% to 75%)" }]);
});

it("refuses a figure that is none, by name", () => {
  const picture = one(null);
  const broken = { ...picture.setups[0]!, charge: { ...picture.setups[0]!.charge, p10: [NaN] } };
  expect(() => chargeChart({ ...picture, setups: [broken] }, { width_px: 700, height_px: 300 })).toThrow(
    /charge\.p10\[0\] of now/,
  );
  expect(() => chargeChart(picture, { width_px: NaN, height_px: 300 })).toThrow(/width_px/);
});

describe("with four setups or more", () => {
  const four = { ...one(null), setups: ["a", "b", "c", "d"].map((id) => ({ ...one(null).setups[0]!, id, name: id })) };
  const bands = (picture: ChargePicture, focus?: string) =>
    [
      ...toSvgText(chargeChart(picture, { width_px: 700, height_px: 300, focus }), "light").matchAll(
        /fill-opacity="0.2"/g,
      ),
    ].length;
  it("draws one band, the focus's or the first's", () => {
    expect(bands(four)).toBe(1);
    expect(bands(four, "c")).toBe(1);
    expect(bands(four, "gone")).toBe(1);
    expect(bands({ ...four, setups: four.setups.slice(0, 3) })).toBe(3);
  });
});

it("is made from an answer, the food's hour set after the median cut-off", () => {
  const setup = {
    id: "now",
    name: "Now",
    charge: one(null).setups[0]!.charge,
    days: { dark: 2, average: 3, drawn: { p10: 2, p50: 2.5, p90: 3 } },
    food: { hoursFromCutOffTo5C: 1.5, hoursFromCutOffTo8C: null, hoursAbove5C: null },
  } as unknown as SetupAnswer;
  const answer: ExplainAnswer = { seed: 1, draws: 200, horizon_days: 60, nights: 3, setups: [setup] };
  const picture = chargePictureOf(answer, { reserves: { now: 0.4 } });
  expect(picture.setups[0]).toMatchObject({ reserve: 0.4, foodPasses5C_days: 2.5 + 1.5 / 24, days: { p50: 2.5 } });
  expect(chargePictureOf(answer).setups[0]?.reserve).toBeNull();
});
