import electrical from "../fixtures/reference/electrical.json" with { type: "json" };
import { portable, steady, sum, threeWay } from "../fixtures/loads.ts";
import { carnotCop } from "../../packages/sim/src/loads/compressorCop.ts";
import { coolingHeat_kJ_kg, foodFromWater, type FoodHeat } from "../../packages/sim/src/loads/food.ts";
import { absorptionFridge, compressorFridge, inverterRunningLoss_W } from "../../packages/sim/src/loads/index.ts";
import { relaxed_C } from "../../packages/sim/src/loads/lumped.ts";
import type { Check } from "./compare.ts";

/*
 * Rows of the topics "fridge" and "loads" that yield no check here, and why:
 * - door-air-change, dar-cop, inverter-small-20W: bounds on the model rather than values of it; held in tests/units/sim/loads.
 * - iec62552-temps, iec62552-linear: the fridge is calibrated from one rating; two-point labels are not an input.
 * - fridge-size-exponent, cpap, inverter-noload-meas: facts about equipment as sold, not computed by the loads.
 * - fridge-cutouts: volts at the fridge belong to its wiring.
 * - ac-surge: the ratio of two amps in a maker's table; surge is for the peaks.
 * - euro-efficiency-weights: a weighted efficiency is not an output.
 */

interface Row {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: unknown;
  readonly source: string;
  readonly standing: Check["standing"];
}

const rows = electrical.checks as unknown as readonly Row[];

function row(id: string): Row {
  const found = rows.find((each) => each.id === id);
  if (found === undefined) throw new Error(`the fixture has no row ${id}`);
  return found;
}

/** A check with its row's own source and standing. */
function fromRow(id: string, part: string, rest: Omit<Check, "id" | "source" | "standing">): Check {
  const { source, standing } = row(id);
  return { id: part === "" ? id : `${id}, ${part}`, source, standing, ...rest };
}

const value = (id: string): number => row(id).expected as number;
const input = (id: string, name: string): number => row(id).inputs[name] ?? NaN;

const carnot = fromRow("carnot-lbp", "", {
  quantity: "Carnot coefficient of performance",
  unit: "1",
  expected: value("carnot-lbp"),
  tolerance: { abs: 0.001 },
  got: () => carnotCop(input("carnot-lbp", "Te_C"), input("carnot-lbp", "Tc_C")),
});

/** 15 °C to 55 °C in even ramps, two hours held: a mean of 36.7 °C, the row's "about 37". */
const chamber_C = Float64Array.from({ length: 24 }, (_, i) => 55 - (40 / 11) * Math.max(0, Math.abs(i + 0.5 - 12) - 1));
const chamberFridge_A = (): number => sum(compressorFridge(portable, chamber_C).power_W) / 24 / 12;
const chamber = row("fridge-chamber-test").expected as {
  readonly median_A: number;
  readonly Ah_day: readonly number[];
};
const chamberChecks: readonly Check[] = [
  fromRow("fridge-chamber-test", "median amps", {
    quantity: "portable fridge in a hot chamber, rated 1.0 A at 25 °C (rating from memory)",
    unit: "A at 12 V",
    expected: chamber.median_A,
    tolerance: { rel: 0.05 },
    got: chamberFridge_A,
  }),
  fromRow("fridge-chamber-test", "median amp-hours a day", {
    quantity: "portable fridge in a hot chamber, a day",
    unit: "Ah",
    expected: chamber.Ah_day[1] ?? NaN,
    tolerance: { rel: 0.05 },
    got: () => 24 * chamberFridge_A(),
  }),
];

const beef: FoodHeat = {
  above_kJ_kgK: input("freeze-beef", "c_above"),
  below_kJ_kgK: input("freeze-beef", "c_below"),
  freezing_kJ_kg: input("freeze-beef", "latent"),
  freezesAt_C: input("freeze-beef", "T_freeze"),
};
/** The row gives no heats: those of water and ice, from any handbook. */
const water: FoodHeat = { above_kJ_kgK: 4.19, below_kJ_kgK: 2.1, freezing_kJ_kg: 334, freezesAt_C: 0 };
const heat_Wh = (id: string, food: FoodHeat, from_C: number, to_C: number): Check =>
  fromRow(id, "", {
    quantity: "heat to cool and freeze food",
    unit: "Wh",
    expected: value(id),
    tolerance: { abs: 0.5 },
    got: () => (input(id, "kg") * coolingHeat_kJ_kg(food, from_C, to_C)) / 3.6,
  });
const foodChecks: readonly Check[] = [
  heat_Wh("freeze-beef", beef, input("freeze-beef", "T_from"), input("freeze-beef", "T_to")),
  heat_Wh("make-ice", water, input("make-ice", "from_C"), input("make-ice", "to_C")),
];

const rule = row("food-water-rule").expected as { c_above: number; c_below: number; latent: number };
const ruled = (): FoodHeat => foodFromWater(input("food-water-rule", "pct_water") / 100, 0);
const ruleChecks: readonly Check[] = [
  ["above freezing", rule.c_above, () => ruled().above_kJ_kgK, "kJ/kgK"] as const,
  ["below freezing", rule.c_below, () => ruled().below_kJ_kgK, "kJ/kgK"] as const,
  ["to freeze", rule.latent, () => ruled().freezing_kJ_kg, "kJ/kg"] as const,
].map(([part, expected, got, unit]) =>
  fromRow("food-water-rule", part, {
    quantity: "heat of food by its water",
    unit,
    expected,
    tolerance: { abs: 0.001 },
    got,
  }),
);

const warming = fromRow("warmup-exponential", "", {
  quantity: "cabinet left to warm",
  unit: "°C",
  expected: value("warmup-exponential"),
  tolerance: { abs: 0.02 },
  got: () => {
    const of = (name: string): number => input("warmup-exponential", name);
    return relaxed_C(of("T0"), of("Ta"), (of("UA") * 3.6) / of("C_kJ_K"), of("hours"));
  },
});

const lossRow = row("inverter-loss-model");
const fractions = (lossRow.inputs as unknown as { readonly frac: readonly number[] }).frac;
const lossModel: readonly Check[] = fractions.map((fraction, i) =>
  fromRow("inverter-loss-model", `${fraction} of rated`, {
    quantity: "inverter efficiency",
    unit: "1",
    expected: (lossRow.expected as readonly number[])[i] ?? NaN,
    tolerance: { abs: 0.002 },
    got: () => {
      const [rated_W, idle_W] = [input("inverter-loss-model", "Pr"), input("inverter-loss-model", "P0")];
      const load_W = fraction * rated_W;
      const unsaid = { rated_W, surge_W: 2 * rated_W, idle_W, peakEfficiency: null, on: "in-use" } as const;
      return load_W / (load_W + idle_W + inverterRunningLoss_W(unsaid, load_W));
    },
  }),
);

/** A three-way fridge of 270 g a day, flat out on gas for ten days in a steady bay. "About": half a degree. */
const absorption: readonly Check[] = [
  [32, 8],
  [35, 13],
  [40, 20],
].map(([bay_C = NaN, inside_C = NaN]) => ({
  id: `three-way at ${bay_C} °C`,
  quantity: "three-way fridge flat out on gas",
  unit: "°C",
  source: "what the trade expects of one in the heat",
  standing: "common practice, no source",
  expected: inside_C,
  tolerance: { abs: 0.5 },
  got: () => absorptionFridge(threeWay, steady(bay_C, 240), null).inside_C.at(-1) ?? NaN,
}));

export const checks: readonly Check[] = [
  carnot,
  ...chamberChecks,
  ...foodChecks,
  ...ruleChecks,
  warming,
  ...lossModel,
  ...absorption,
];
