import type { ConverterFeed, Inverter, SolarCharger } from "@stayput/sim";
import type { Row, Standing } from "../row.ts";

interface Priced {
  readonly mass_kg: number;
  /** in the job's currency; none is known here */
  readonly price: null;
}

export interface SolarChargerRow extends Row, Priced {
  readonly kind: SolarCharger["kind"];
  /** output amps */
  readonly rated_A: number;
}

/** A converter between the vehicle's battery and the bank's. */
export interface ConverterRow extends Row, Priced {
  /** output amps */
  readonly rated_A: number;
  readonly efficiency: ConverterFeed["efficiency"];
  readonly minInput_V: number;
}

export interface InverterRow extends Row, Priced {
  readonly rated_W: number;
  readonly surge_W: number;
  readonly idle_W: number;
  readonly peakEfficiency: Inverter["peakEfficiency"];
}

export interface MainsChargerRow extends Row, Priced {
  readonly rated_A: number;
}

const memory = {
  price: null,
  source: "typical data sheets of this kind and size",
  standing: "from memory" as Standing,
};

const solar = (kind: SolarCharger["kind"], sizes: readonly (readonly [rated_A: number, mass_kg: number])[]) =>
  sizes.map(([rated_A, mass_kg]): SolarChargerRow => {
    return {
      ...memory,
      id: `${kind}-${rated_A}`,
      name: `${rated_A} A ${kind.toUpperCase()} solar charger`,
      kind,
      rated_A,
      mass_kg,
    };
  });

/** Solar chargers by kind and output amps. */
export const solarChargers: readonly SolarChargerRow[] = [
  ...solar("pwm", [
    [10, 0.2],
    [20, 0.3],
    [30, 0.4],
  ]),
  ...solar("mppt", [
    [10, 0.4],
    [15, 0.6],
    [20, 0.7],
    [30, 1.3],
    [40, 1.5],
    [50, 1.5],
    [60, 2.5],
    [85, 4.5],
  ]),
];

/** Converters by output amps. */
export const converters: readonly ConverterRow[] = (
  [
    [12, 0.6],
    [18, 0.8],
    [25, 1.3],
    [30, 1.4],
    [40, 1.8],
    [50, 2.1],
    [60, 2.6],
  ] as const
).map(([rated_A, mass_kg]) => ({
  ...memory,
  id: `converter-${rated_A}`,
  name: `${rated_A} A converter, 12 V to 12 V`,
  rated_A,
  efficiency: 0.88,
  minInput_V: 11.5,
  mass_kg,
  source: "efficiency 0.85 to 0.90, public technical page; input floor and mass from memory",
}));

/** No-load draw of about 0.7 % of rating, least 4 W. Bench measurement, published: 60 W 1.46, 400 W 5.2, 700 W 11.8 W. */
export const inverters: readonly InverterRow[] = (
  [
    [300, 4, 1.5],
    [600, 6, 2.5],
    [1000, 8, 3.5],
    [1500, 11, 5],
    [2000, 14, 6.5],
    [2500, 18, 8],
    [3000, 21, 10],
  ] as const
).map(([rated_W, idle_W, mass_kg]) => ({
  ...memory,
  id: `inverter-${rated_W}`,
  name: `${rated_W} W inverter, sine wave`,
  rated_W,
  surge_W: 2 * rated_W,
  idle_W,
  peakEfficiency: 0.92,
  mass_kg,
}));

/** Mains chargers by output amps. */
export const mainsChargers: readonly MainsChargerRow[] = (
  [
    [10, 1.2],
    [15, 1.5],
    [20, 1.8],
    [25, 2.2],
    [30, 2.6],
    [40, 3.5],
    [60, 5],
  ] as const
).map(([rated_A, mass_kg]) => {
  return { ...memory, id: `mains-${rated_A}`, name: `${rated_A} A mains charger`, rated_A, mass_kg };
});
