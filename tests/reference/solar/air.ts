import { erbsShape } from "../../../packages/sim/src/air/dayShape.ts";
import type { Check } from "../compare.ts";
import { groupOf, rowsOf, sourceOf } from "./fixture.ts";

const shape = rowsOf("diurnal_temperature_erbs_shape").map((row): Check => ({
  id: `hour ${row.number("hour")}`,
  quantity: "shape of the day's temperature",
  unit: "1",
  source: sourceOf("diurnal_temperature_erbs_shape"),
  standing: "own computation from the published equation",
  expected: row.number("shape"),
  tolerance: { abs: 1e-9 },
  got: () => erbsShape(row.number("hour")),
}));

const { extremes } = groupOf("diurnal_temperature_erbs_shape") as unknown as {
  extremes: { max: number; max_hour: number; min: number; min_hour: number };
};
const fine = Array.from({ length: 24_000 }, (_, i) => i / 1000);
const ends = [
  ["highest", extremes.max, () => Math.max(...fine.map(erbsShape)), 1e-6],
  ["lowest", extremes.min, () => Math.min(...fine.map(erbsShape)), 1e-6],
  ["hour of the highest", extremes.max_hour, () => best((t) => erbsShape(t)), 0.006], // given to 0.01 h
  ["hour of the lowest", extremes.min_hour, () => best((t) => -erbsShape(t)), 0.006],
] as const;
const best = (of: (t: number) => number): number => fine.reduce((top, t) => (of(t) > of(top) ? t : top), 0);
const extremesChecks = ends.map(([id, expected, got, abs]): Check => ({
  id,
  quantity: "extremes of the day's temperature shape",
  unit: "1 or h",
  source: sourceOf("diurnal_temperature_erbs_shape"),
  standing: "own computation from the published equation",
  expected,
  tolerance: { abs },
  got,
}));

/**
 * The other published shape of a day in the fixture, for clear design days (ASHRAE), is not what we compute; that our daily
 * mean lies by its is a unit test of the air.
 */
export const airChecks: readonly Check[] = [...shape, ...extremesChecks];
