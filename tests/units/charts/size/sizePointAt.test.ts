import { expect, it } from "vitest";
import { sizeChart, sizeGeometry, sizeLadderTable, sizePointAt, sizeTable, toSvgText } from "@stayput/charts";
import { sizeSample } from "../../../fixtures/charts/samples.ts";

const options = { width_px: 700, height_px: 380, locale: "en" };
const geometry = sizeGeometry(sizeSample, options);

it("finds the point under a finger, and none where there is none", () => {
  for (const placed of geometry.points) {
    expect(sizePointAt(geometry, placed.x + 5, placed.y - 5)?.index).toBe(placed.index);
    expect(sizePointAt(geometry, placed.x, placed.y, 0)?.point).toBe(placed.point);
  }
  expect(sizePointAt(geometry, geometry.plot.left, geometry.plot.bottom)).toBeNull();
});

it("gives bank and array under any place, kept inside the axes", () => {
  const [first] = geometry.points;
  const { bank_Ah, array_W } = geometry.sizesAt(first!.x, first!.y);
  expect(bank_Ah).toBeCloseTo(first!.point.bank_Ah, 6);
  expect(array_W).toBeCloseTo(first!.point.array_W, 6);
  expect(geometry.sizesAt(-1000, 0).array_W).toBe(geometry.sizesAt(geometry.plot.left, 0).array_W);
});

it("offers each point to the keyboard by its figures", () => {
  const saved = toSvgText(sizeChart(sizeSample, options), "light");
  const offered = [...saved.matchAll(/data-point="(\d+)" tabindex="0" role="button" aria-label="([^"]+)"/g)];
  expect(offered.map((match) => Number(match[1]))).toEqual(sizeSample.points.map((_, i) => i));
  expect(offered[0]?.[2]?.replaceAll("\u00a0", " ")).toBe("100 Ah LiFePO₄ with 600 W: chance 93%, €1,980, 38 kg");
  expect(offered[4]?.[2]).not.toContain("null");
});

it("tabulates the points and the whole ladder", () => {
  expect(sizeTable(sizeSample).rows).toHaveLength(sizeSample.points.length);
  const ladder = sizeLadderTable(sizeSample);
  expect(ladder.rows).toHaveLength(sizeSample.grid!.banks_Ah.length);
  expect(ladder.columns).toHaveLength(1 + sizeSample.grid!.arrays_W.length);
});
