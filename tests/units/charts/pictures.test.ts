import type { SVGTemplateResult } from "lit";
import { describe, expect, it } from "vitest";
import * as charts from "@stayput/charts";
import * as samples from "../../fixtures/charts/samples.ts";
import { attributesOf, wellFormed } from "./xml.ts";

const wide = { width_px: 700, height_px: 320, locale: "en" };
const phone = { width_px: 348, height_px: 320, locale: "en" };

const pictures: [string, SVGTemplateResult][] = [
  ["charge-one", charts.chargeChart(samples.chargeSample(1), { ...wide, at: 1.5, showAverage: true })],
  ["charge-three", charts.chargeChart(samples.chargeSample(3), wide)],
  ["charge-six", charts.chargeChart(samples.chargeSample(6), wide)],
  ["charge-phone", charts.chargeChart(samples.chargeSample(2), phone)],
  ["charge-panels-phone", charts.chargePanels(samples.chargeSample(4), phone)],
  ["charge-day-one", charts.chargeChart(samples.diesOnDayOne, wide)],
  ["charge-never", charts.chargeChart(samples.neverRunsDown, wide)],
  ["charge-none", charts.chargeChart(samples.chargeSample(0), wide)],
  ["day", charts.dayChart(samples.daySample, { ...wide, at: 10 })],
  ["day-phone", charts.dayChart(samples.daySample, phone)],
  ["day-none", charts.dayChart({ hours: [] }, wide)],
  ["uses", charts.usesChart(samples.usesSample, wide)],
  ["uses-phone", charts.usesChart(samples.usesSample, phone)],
  ["year", charts.yearChart(samples.yearSample(3), { ...wide, at: 3 })],
  ["year-phone", charts.yearChart(samples.yearSample(5), phone)],
  ["size", charts.sizeChart(samples.sizeSample, { ...wide, at: 2 })],
  ["size-phone", charts.sizeChart(samples.sizeSample, phone)],
  ["size-none", charts.sizeChart({ ...samples.sizeSample, grid: null, points: [], setups: [] }, wide)],
  ["run", charts.runChart(samples.runSample, wide)],
  ["run-phone", charts.runChart(samples.runSample, phone)],
  ["upgrades", charts.upgradesChart(samples.upgradesSample, wide)],
  ["upgrades-phone", charts.upgradesChart(samples.upgradesSample, phone)],
  [
    "sketch",
    charts.daySketch({
      charge: samples.chargeSample(1).setups[0]!.charge.p50,
      nights: 4,
      cutOff_days: 2.5,
      reserve: 0.5,
    }),
  ],
];

describe.each(pictures)("the picture %s", (name, picture) => {
  const saved = charts.toSvgText(picture, "light");
  it("is as it was when it was last looked at", async () => {
    await expect(saved.replaceAll("><", ">\n<")).toMatchFileSnapshot(`./snapshots/${name}.svg`);
  });
  it("is well-formed, whole and self-contained", () => {
    expect(wellFormed(saved)).toContain("svg");
    expect(saved).not.toMatch(/NaN|undefined|Infinity|class=|var\(|http(?!:\/\/www\.w3\.org\/2000\/svg)/);
  });
  it("has every id once, and refers to none that is not there", () => {
    const ids = [...saved.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of saved.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
  });
  it("looks other in the dark but says the same", () => {
    const dark = charts.toSvgText(picture, "dark");
    expect(dark).not.toBe(saved);
    const words = (text: string) => [...text.matchAll(/>([^<]+)</g)].map((match) => match[1]);
    expect(words(dark)).toEqual(words(saved));
  });
});

it("puts a title and a note of the reader's own into a saved picture, safely", () => {
  const saved = charts.toSvgText(charts.usesChart(samples.usesSample, wide), "light", {
    title: "A <b>",
    note: "n & m",
  });
  expect(wellFormed(saved)).toContain("text");
  expect(saved).toContain("A &lt;b&gt;");
  expect(saved).toContain("n &amp; m");
});

it("says what it shows to a screen reader, and hides the sketch", () => {
  const label = (picture: SVGTemplateResult) => attributesOf(charts.toSvgText(picture, "light"), "svg", "aria-label");
  expect(label(charts.chargeChart(samples.chargeSample(2), wide))).toEqual([
    charts.chargeSummary(samples.chargeSample(2)),
  ]);
  expect(label(charts.sizeChart(samples.sizeSample, wide))).toEqual([charts.sizeSummary(samples.sizeSample)]);
});

it("draws no wider than asked and never cuts its own height short", () => {
  for (const { geometry, data } of [
    { geometry: charts.chargeGeometry(samples.chargeSample(6), phone), data: "charge" },
    { geometry: charts.chargePanelsGeometry(samples.chargeSample(6), phone), data: "panels" },
    { geometry: charts.usesGeometry(samples.usesSample, phone), data: "uses" },
    { geometry: charts.dayGeometry(samples.daySample, phone), data: "day" },
    { geometry: charts.yearGeometry(samples.yearSample(6), phone), data: "year" },
  ]) {
    expect(geometry.width_px, data).toBe(phone.width_px);
    expect(geometry.plot.bottom, data).toBeLessThanOrEqual(geometry.height_px);
    expect(geometry.plot.right, data).toBeLessThanOrEqual(geometry.width_px);
  }
});
