import type {
  Appliance,
  Bank,
  CompressorFridge,
  ConverterFeed,
  PathPiece,
  RelayFeed,
  Setup,
} from "../../../../packages/sim/src/study.ts";

/** Invented setups for the wiring tests. */
export const cable = (length_m: number, area_mm2: number, temp_C = 40): PathPiece & { kind: "cable" } => ({
  kind: "cable",
  length_m,
  area_mm2,
  conductorClass: 5,
  temp_C,
});

export const bank = (change: Partial<Bank> = {}): Bank => ({
  chemistry: "agm",
  nominal_V: 12,
  capacity_Ah: 200,
  condition: 1,
  where: "inside",
  reserve: 0.5,
  cutOff_V: null,
  absorption_V: null,
  restedVolts: null,
  ...change,
});

export const source = { volts: 14.2, low_V: null, lowShare: 0.8, spare_A: 60 };
export const plug: PathPiece = { kind: "plug", limit_A: 50, resistance_mOhm: 0.5 };

export const relay = (change: Partial<RelayFeed> = {}): RelayFeed => ({
  kind: "relay",
  source,
  path: [{ kind: "fuse", rated_A: 50 }, cable(7, 16), plug],
  ...change,
});

export const converter = (change: Partial<ConverterFeed> = {}): ConverterFeed => ({
  kind: "converter",
  rated_A: 25,
  count: 1,
  efficiency: 0.9,
  minInput_V: 11.5,
  source,
  path: [{ kind: "fuse", rated_A: 60 }, cable(7, 16), plug],
  ...change,
});

export const fridge: CompressorFridge = {
  id: "fridge",
  name: "Fridge",
  kind: "compressor-fridge",
  supply: "dc",
  rated_Wh_day: 720,
  ratedAt_C: 25,
  inside_C: 4,
  compressor_W: 75,
  volume_L: 188,
  restock_kg_day: 0,
  freezerShare: 0,
  only: null,
};

export const kettle: Appliance = {
  id: "kettle",
  name: "Kettle",
  kind: "appliance",
  supply: "ac",
  watts: 1500,
  count: 1,
  standby_W: 0,
  use: [{ at: 7, minutes: 5, everyDays: 1 }],
  outside: null,
  only: null,
};

export const inverter = { rated_W: 2000, surge_W: 4000, idle_W: 14, peakEfficiency: null, on: "in-use" } as const;

export const setup = (change: Partial<Setup> = {}): Setup => ({
  id: "now",
  name: "As it came",
  bank: bank(),
  arrays: [],
  solarCharger: null,
  feed: relay(),
  inverter: null,
  mainsCharger: null,
  loads: [],
  price: 0,
  mass_kg: 0,
  ...change,
});
