import {
  alternatorCurve,
  alternatorOutput_A,
  alternatorSpare_A,
  converterEfficiency,
  fridgeCutOuts,
  regulatorVolts_V,
  variableAlternator,
} from "../../packages/sim/src/feed/index.ts";
import { startFactor } from "../../packages/sim/src/answers/wiringPeaks.ts";
import { fromRow, row } from "./cable.ts";
import type { Check } from "./compare.ts";

const curve = row("alternator-hot-curve");
const { rated_A, alt_rpm, pulley } = curve.inputs as { rated_A: number; alt_rpm: number[]; pulley: number };
const output = curve.expected as { hot_A: number[]; cold_A: (number | null)[] };

const alternator = (["hot", "cold"] as const).flatMap((heat) =>
  output[`${heat}_A`].flatMap((expected, i) => {
    if (expected === null) return [];
    const got = () => alternatorOutput_A(rated_A, alt_rpm[i]!, heat);
    const of = `${heat}, ${alt_rpm[i]} rpm`;
    return [fromRow("alternator-hot-curve", { of, quantity: "alternator output", unit: "A", expected, got })];
  }),
);

/** The row's note: 1300/1.78 = 730 engine rpm: 32 % of rating at idle, hot. Here of twice the machine, 20 A its vehicle's. */
const idle = fromRow("alternator-hot-curve", {
  of: "100 A machine at idle, less 20 A",
  quantity: "alternator's spare amps",
  unit: "A",
  expected: 0.32 * 100 - 20,
  got: () => alternatorSpare_A(100, 20, 730),
});

const ratio = fromRow("alternator-hot-curve", {
  of: "pulley",
  quantity: "pulley ratio",
  unit: "1",
  expected: pulley,
  got: () => alternatorCurve.pulley,
});

const regulator = fromRow("regulator-tempco", {
  of: "60 °C",
  quantity: "regulator volts",
  unit: "V",
  expected: (row("regulator-tempco").expected as { V60: number }).V60,
  got: () => regulatorVolts_V(60),
});

const { normal_V, reduced_V_typ } = row("smart-alternator").expected as { normal_V: number[]; reduced_V_typ: number };
const variable = [
  ["normal, low", normal_V[0], () => variableAlternator.normal_V[0]],
  ["normal, high", normal_V[1], () => variableAlternator.normal_V[1]],
  ["reduced", reduced_V_typ, () => variableAlternator.reduced_V],
].map(([of, expected, got]) =>
  fromRow("smart-alternator", {
    of: of as string,
    quantity: "variable alternator's volts",
    unit: "V",
    expected,
    got: got as () => number,
  }),
);

const range = (row("dcdc-efficiency").expected as { fixed_power_range: number[] }).fixed_power_range;
const efficiency = (["low", "high"] as const).map((of, i) =>
  fromRow("dcdc-efficiency", {
    of,
    quantity: "converter efficiency",
    unit: "1",
    expected: range[i],
    got: () => converterEfficiency[of],
  }),
);

const stops = row("fridge-cutouts").expected as Record<string, [number, number]>;
const cutOuts = (
  [
    ["default", "low"],
    ["battery_less_trailer", "middle"],
    ["cautious", "high"],
  ] as const
).flatMap(([told, ours]) =>
  (["stops_V", "starts_V"] as const).map((end, i) =>
    fromRow("fridge-cutouts", {
      of: `${told}, ${end}`,
      quantity: "fridge cut-out",
      unit: "V",
      expected: stops[told]![i],
      got: () => fridgeCutOuts[ours][end],
    }),
  ),
);

const start = fromRow("ac-surge", {
  of: "locked rotor over running",
  quantity: "compressor's start",
  unit: "1",
  expected: row("ac-surge").expected,
  got: () => startFactor,
});

export const checks: readonly Check[] = [
  ...alternator,
  idle,
  ratio,
  regulator,
  ...variable,
  ...efficiency,
  ...cutOuts,
  start,
];
