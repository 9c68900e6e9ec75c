import {
  absorptionFridges,
  appliances,
  banks,
  compressorFridges,
  conductors,
  converters,
  credits,
  inventedPrices,
  inverters,
  mainsChargers,
  panels,
  plugs,
  skyClasses,
  solarChargers,
  type Row,
} from "@stayput/catalogue";
import { describe, expect, it } from "vitest";

const tables: Record<string, readonly Row[]> = {
  ...{ absorptionFridges, appliances, banks, compressorFridges, conductors, converters, inverters, mainsChargers },
  ...{ panels, plugs, skyClasses, solarChargers, prices: [inventedPrices] },
};

/** Every number anywhere in a row. */
function numbers(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbers) : [];
}

describe.each(Object.entries(tables))("%s", (_name, rows) => {
  it("has rows, each id once, fit for a job's id", () => {
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    for (const { id } of rows) expect(id).toMatch(/^[a-z0-9][a-z0-9.-]*$/);
  });
  it("says of every row where it is from and how far to trust it", () => {
    const standings = [
      ...["published", "own computation from the published equation", "from memory"],
      ...["common practice, no source", "invented for demonstration"],
    ];
    for (const row of rows) {
      expect(row.name.length, row.id).toBeGreaterThan(1);
      expect(row.source.length, row.id).toBeGreaterThan(3);
      expect(standings, row.id).toContain(row.standing);
    }
  });
  it("holds finite numbers only", () => expect(rows.flatMap(numbers).every(Number.isFinite)).toBe(true));
});

describe("appliances", () => {
  it.each(appliances.map((row) => [row.id, row] as const))(
    "%s draws within its range and is used some time",
    (_id, row) => {
      expect(row.watts).toBeGreaterThanOrEqual(row.range_W[0]);
      expect(row.watts).toBeLessThanOrEqual(row.range_W[1]);
      expect(row.standby_W).toBeLessThan(row.watts);
      if (row.surgeFactor !== null) expect(row.surgeFactor).toBeGreaterThan(1);
      expect(row.use.length).toBeGreaterThan(0);
    },
  );
});

describe("ladders", () => {
  it.each([
    [
      "banks",
      (chemistry: string) => banks.filter((row) => row.chemistry === chemistry).map((row) => row.mass_kg),
      ["agm", "gel", "flooded", "lfp"],
    ],
    [
      "panels",
      (mount: string) => panels.filter((row) => row.mount === mount).map((row) => row.watts),
      ["flush", "bonded", "free"],
    ],
    [
      "conductors",
      (by: string) => conductors.filter((row) => row.soldBy === by).map((row) => row.area_mm2),
      ["area", "gauge", "diameter"],
    ],
  ] as const)("%s rise", (_name, ladder, kinds) => {
    for (const kind of kinds) {
      const steps = ladder(kind);
      expect(steps.length, kind).toBeGreaterThan(1);
      expect(steps).toEqual(steps.toSorted((a, b) => a - b));
    }
  });
  it("lithium weighs less than half of AGM at 100 Ah", () => {
    const mass = (id: string) => banks.find((row) => row.id === id)!.mass_kg;
    expect(mass("lfp-100")).toBeLessThan(mass("agm-100") / 2); // common practice, no source
  });
  it("panels give what silicon can from their size", () => {
    for (const { id, watts, length_mm, width_mm } of panels) {
      const efficiency = watts / ((length_mm * width_mm) / 1000);
      expect(efficiency, id).toBeGreaterThan(0.1);
      expect(efficiency, id).toBeLessThan(0.24); // the best cells on sale
    }
  });
});

describe("fridges", () => {
  it("the three-way elements empty a bank as they are known to: 222 to 415 Ah a day", () => {
    const fitted = absorptionFridges.filter((row) => row.volume_L >= 90);
    for (const row of fitted) {
      const perDay_Ah = (row.element_dc_W * 24) / 12;
      expect(perDay_Ah).toBeGreaterThanOrEqual(222);
      expect(perDay_Ah).toBeLessThanOrEqual(415);
    }
  });
  it("a portable of the chamber test's size is the test's median: 48 Ah a day", () => {
    const tested = compressorFridges.find((row) => row.id === "fridge-portable-42")!;
    expect(Math.abs(tested.rated_Wh_day / 12 - 48)).toBeLessThanOrEqual(0.5); // rounded to 10 Wh
  });
  it("bigger ones use more, and no compressor is short of its rating", () => {
    for (const [i, row] of compressorFridges.entries()) {
      const before = compressorFridges[i - 1];
      if (before?.ratedAt_C === row.ratedAt_C) expect(row.rated_Wh_day).toBeGreaterThan(before.rated_Wh_day);
      expect(row.rated_Wh_day).toBeLessThan(24 * row.compressor_W);
    }
  });
});

it("the credits name both sources of the climate", () => {
  expect(credits.map((credit) => credit.printed).join("\n")).toMatch(/SSE Release 6.0[^]*Deutscher Wetterdienst/);
});
