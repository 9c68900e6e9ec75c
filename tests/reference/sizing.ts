import electrical from "../fixtures/reference/electrical.json" with { type: "json" };
import { handbookSize, type HandbookSize } from "../../packages/sim/src/answers/handbook.ts";
import { lossOfLoad } from "../../packages/sim/src/answers/lossOfLoad.ts";
import type { Check } from "./compare.ts";

interface Row {
  readonly id: string;
  readonly inputs: unknown;
  readonly expected: unknown;
  readonly tolerance: Check["tolerance"];
  readonly source: string;
  readonly standing: Check["standing"];
}
const rows = electrical.checks as unknown as readonly Row[];

function row(id: string): Row {
  const found = rows.find((each) => each.id === id);
  if (found === undefined) throw new Error(`the fixture has no row ${id}`);
  return found;
}

/** A store of so many days' load; a sunny day brings two loads, another none, and each takes one. */
function walk(id: string): Check {
  const { inputs, expected, tolerance, source, standing } = row(id);
  const { battery_days, p_sunny } = inputs as { battery_days: number; p_sunny: number };
  const changes = [
    { steps: 1, chance: p_sunny },
    { steps: -1, chance: 1 - p_sunny },
  ];
  return {
    id,
    quantity: "share of days short, random walk",
    unit: "1",
    source,
    standing,
    expected: expected as number,
    tolerance,
    got: () => lossOfLoad(battery_days, changes),
  };
}

interface WorkedInputs {
  readonly Edc_Wh: number;
  readonly Eac_Wh: number;
  readonly eta_inv: number;
  readonly V: number;
  readonly days: number;
  readonly AGM: Chemistry;
  readonly LFP: Chemistry;
  readonly PSH: number;
  readonly fo: number;
  readonly derates: readonly number[];
}
interface Chemistry {
  readonly DoD: number;
  readonly temp: number;
  readonly eta: number;
}

const worked = row("sizing-worked");
const given = worked.inputs as WorkedInputs;
const sizeFor = ({ DoD, temp, eta }: Chemistry): HandbookSize =>
  handbookSize({
    dc_Wh_day: given.Edc_Wh,
    ac_Wh_day: given.Eac_Wh,
    inverterEfficiency: given.eta_inv,
    nominal_V: given.V,
    autonomy_days: given.days,
    depth: DoD,
    temperatureFactor: temp,
    ageing: 1, // the example leaves ageing out
    bankEfficiency: eta,
    sun_h_day: given.PSH,
    arrayToLoad: given.fo,
    derates: given.derates,
  });

const part = (name: string, quantity: string, unit: string, got: () => number): Check => ({
  id: `sizing-worked, ${name}`,
  quantity,
  unit,
  source: worked.source,
  standing: worked.standing,
  expected: (worked.expected as Readonly<Record<string, number>>)[name] ?? NaN,
  tolerance: worked.tolerance,
  got,
});

export const checks: readonly Check[] = [
  walk("lolp-walk-N4-p0.5"),
  walk("lolp-walk-N4-p0.6"),
  part("load_Wh", "design load", "Wh", () => sizeFor(given.AGM).load_Wh_day),
  part("load_Ah", "design load", "Ah", () => sizeFor(given.AGM).load_Ah_day),
  part("AGM_Ah", "bank by the handbook", "Ah", () => sizeFor(given.AGM).bank_Ah),
  part("LFP_Ah", "bank by the handbook", "Ah", () => sizeFor(given.LFP).bank_Ah),
  part("AGM_W", "array by the handbook", "W", () => sizeFor(given.AGM).array_W),
  part("LFP_W", "array by the handbook", "W", () => sizeFor(given.LFP).array_W),
];
