import electrical from "../fixtures/reference/electrical.json" with { type: "json" };
import {
  ampacity_A,
  awgArea_mm2,
  awgDiameter_mm,
  awgPerKm_Ohm,
  cableResistance_Ohm,
  conductorNamed,
  converterInput_A,
  copperFactor,
  fuseDistance,
  gaugeByDrop,
  hotConnector_A,
  layingFactor,
  pathDrop_V,
} from "../../packages/sim/src/feed/index.ts";
import type { Check } from "./compare.ts";

/** Topics "cable" and "safety" of the fixture: every row yields at least one check (tests/units/sim/feed/fixtureRows.test.ts). */
interface Row {
  readonly id: string;
  readonly topic: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: unknown;
  readonly tolerance: number | { readonly abs?: number; readonly rel?: number };
  readonly source: string;
  readonly standing: string;
}

const rows = electrical.checks as unknown as readonly Row[];

/** A fixture row by its id; its tolerance as a check takes it. */
export function row(id: string): Row & { readonly allowed: Check["tolerance"] } {
  const found = rows.find((each) => each.id === id);
  if (found === undefined) throw new Error(`the fixture has no row ${id}`);
  const { tolerance } = found;
  return { ...found, allowed: typeof tolerance === "number" ? { abs: tolerance } : tolerance };
}

type Told = Pick<Check, "quantity" | "unit" | "got"> & { readonly expected: unknown; readonly of: string };

/** A check with its row's own source, standing and tolerance. */
export function fromRow(id: string, { of, expected, ...rest }: Told): Check {
  const { source, standing, allowed } = row(id);
  return {
    id: `${id}, ${of}`,
    source,
    standing: standing as Check["standing"],
    tolerance: allowed,
    expected: Number(expected),
    ...rest,
  };
}

const keyed = (id: string): [string, unknown][] => Object.entries(row(id).expected as Record<string, unknown>);
const input = (id: string, name: string): unknown => row(id).inputs[name];
const pair = (area_mm2: number, length_m: number, conductorClass: 2 | 5 = 5, tinned = false) => ({
  kind: "cable" as const,
  length_m,
  area_mm2,
  conductorClass,
  temp_C: 20,
  tinned,
});

/** 1 km of conductor is 5 times 100 m there and back. */
const table = (id: string, conductorClass: 2 | 5, tinned: boolean): Check[] =>
  keyed(id).map(([area, expected]) =>
    fromRow(id, {
      of: `${area} mm²`,
      quantity: "conductor resistance",
      unit: "ohm/km",
      expected,
      got: () => 5 * cableResistance_Ohm(pair(Number(area), 100, conductorClass, tinned)),
    }),
  );

const warm = (input("copper-temp", "T_C") as number[]).map((temp_C, i) =>
  fromRow("copper-temp", {
    of: `${temp_C} °C`,
    quantity: "copper resistance over its 20 °C value",
    unit: "1",
    expected: (row("copper-temp").expected as number[])[i],
    got: () => copperFactor(temp_C),
  }),
);

const gauges = keyed("awg").flatMap(([gauge, told]) => {
  const { d_mm, mm2, ohm_km } = told as { d_mm: number; mm2: number; ohm_km: number };
  const check = (of: string, unit: string, expected: number, got: () => number) =>
    fromRow("awg", { of: `${gauge} AWG ${of}`, quantity: "wire gauge", unit, expected, got });
  return [
    check("diameter", "mm", d_mm, () => awgDiameter_mm(Number(gauge))),
    check("area", "mm²", mm2, () => awgArea_mm2(Number(gauge))),
    check("resistance", "ohm/km", ohm_km, () => awgPerKm_Ohm(Number(gauge))),
  ];
});

const dropChart = keyed("abyc-tableIX").flatMap(([amps, told]) =>
  (told as number[]).map((expected, i) => {
    const length_ft = (input("abyc-tableIX", "L_ft") as number[])[i]!;
    const drop_V = (input("abyc-tableIX", "V") as number) * (input("abyc-tableIX", "drop") as number);
    return fromRow("abyc-tableIX", {
      of: `${amps} A, ${length_ft} ft`,
      quantity: "gauge for a 3 % drop",
      unit: "AWG",
      expected,
      got: () => gaugeByDrop(Number(amps), length_ft, drop_V) ?? NaN,
    });
  }),
);

const written = (gauge: string): number => conductorNamed(gauge.includes("/") ? gauge : `${gauge} AWG`).area_mm2;
const ampacities = (input("abyc-ampacity-105", "awg") as string[]).map((gauge, i) =>
  fromRow("abyc-ampacity-105", {
    of: `${gauge} AWG`,
    quantity: "ampacity",
    unit: "A",
    expected: (row("abyc-ampacity-105").expected as number[])[i],
    got: () => ampacity_A(written(gauge), { bundle: 2, engineSpace: false }) ?? NaN,
  }),
);

/** The factors stand in the row's note: engine space x0.85; bundles: 3 x0.70, 4-6 x0.60, 7-24 x0.50. */
const factors = (
  [
    ["engine space", 0.85, 2, true],
    ["bundle of 3", 0.7, 3, false],
    ["bundle of 4", 0.6, 4, false],
    ["bundle of 6", 0.6, 6, false],
    ["bundle of 7", 0.5, 7, false],
    ["bundle of 24", 0.5, 24, false],
  ] as const
).map(([of, expected, bundle, engineSpace]) =>
  fromRow("abyc-ampacity-105", {
    of,
    quantity: "ampacity factor",
    unit: "1",
    expected,
    got: () => layingFactor({ bundle, engineSpace }),
  }),
);

const dropNames: Readonly<Record<string, string>> = { "6mm_auto_4.6mm2": "6 mm auto" };
const drops = keyed("vdrop-25A-6m").map(([name, expected]) =>
  fromRow("vdrop-25A-6m", {
    of: name,
    quantity: "volt drop",
    unit: "V",
    expected,
    got: () => {
      const { area_mm2 } = conductorNamed(dropNames[name] ?? name);
      return pathDrop_V(
        [pair(area_mm2, input("vdrop-25A-6m", "one_way_m") as number)],
        input("vdrop-25A-6m", "I_A") as number,
      );
    },
  }),
);

const converter = (input("dcdc-constant-power", "Vs") as number[]).map((source_V, i) => {
  const [amps, volts, eta, ohm] = ["Iout", "Vout", "eta", "R_ohm"].map(
    (name) => input("dcdc-constant-power", name) as number,
  );
  return fromRow("dcdc-constant-power", {
    of: `${source_V} V`,
    quantity: "converter input",
    unit: "A",
    expected: (row("dcdc-constant-power").expected as number[])[i],
    got: () => converterInput_A(amps! * volts!, eta!, source_V, ohm!) ?? NaN,
  });
});

const hotPlug = (input("connector-derating", "awg") as number[]).map((gauge, i) =>
  fromRow("connector-derating", {
    of: `${gauge} AWG`,
    quantity: "connector's amps for good, hot",
    unit: "A",
    expected: (row("connector-derating").expected as number[])[i],
    got: () => hotConnector_A(awgArea_mm2(gauge)),
  }),
);

const distance = row("overcurrent-distance").expected as { readonly max_mm_from_battery: number };
const fuseNear = fromRow("overcurrent-distance", {
  of: "in the open",
  quantity: "fuse from battery",
  unit: "mm",
  expected: distance.max_mm_from_battery,
  got: () => fuseDistance.most_mm,
});

export const checks: readonly Check[] = [
  ...table("iec60228-class5-plain", 5, false),
  ...table("iec60228-class5-tinned", 5, true),
  ...table("iec60228-class2-plain", 2, false),
  ...warm,
  ...gauges,
  ...dropChart,
  ...ampacities,
  ...factors,
  ...drops,
  ...converter,
  ...hotPlug,
  fuseNear,
];
