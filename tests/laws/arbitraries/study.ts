import fc from "fast-check";
import type {
  AbsorptionFridge,
  Appliance,
  Bank,
  Climate,
  CompressorFridge,
  Feed,
  Inverter,
  Load,
  Setup,
  SolarArray,
  SolarCharger,
  Study,
  Trip,
} from "../../../packages/sim/src/study.ts";
import { familyFridge, lamp, threeWay } from "../../fixtures/loads.ts";

/** Valid studies of every kind, as scaled integers: quantities that touch their bounds and shrink to plain ones. */
export const int = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
export const scaled = (min: number, max: number, per: number): fc.Arbitrary<number> =>
  int(Math.round(min * per), Math.round(max * per)).map((n) => n / per);
const or = <T>(first: T, other: fc.Arbitrary<T>): fc.Arbitrary<T> => fc.oneof(fc.constant(first), other);

/** Light and warmth that rise and fall once a year, the half year turned round in the south. */
export const anyClimate: fc.Arbitrary<Climate> = fc
  .record({
    latitude_deg: int(-60, 72),
    hasLongitude: fc.boolean(),
    ghi: scaled(1, 6.5, 10),
    ghiSwing: scaled(0, 1, 20),
    mean_C: int(0, 28),
    swing_C: int(0, 12),
    dayRange_C: int(2, 16),
    dayToDay: scaled(0, 0.6, 20),
  })
  .map(({ latitude_deg, hasLongitude, ghi, ghiSwing, mean_C, swing_C, dayRange_C, dayToDay }) => {
    const south = latitude_deg < 0 ? -1 : 1;
    const summer = Array.from({ length: 12 }, (_, m) => -south * Math.cos((2 * Math.PI * m) / 12));
    return {
      latitude_deg,
      longitude_deg: hasLongitude ? 10 : null,
      utcOffset_h: hasLongitude ? 1 : null,
      ghi_kWh_m2_day: summer.map((s) => ghi * (1 + ghiSwing * s)),
      tmax_C: summer.map((s) => mean_C + swing_C * s + dayRange_C / 2),
      tmin_C: summer.map((s) => mean_C + swing_C * s - dayRange_C / 2),
      dayToDay,
    };
  });

const anyShade = fc.array(fc.record({ from: int(0, 23), to: int(0, 24), lost: scaled(0, 1, 10) }), { maxLength: 2 });
const anyDrives = fc
  .record({ everyNights: int(1, 4), departs: scaled(6, 20, 2), hours: scaled(0.5, 4, 2) })
  .map(({ everyNights, departs, hours }) => ({ everyNights, departs, hours: Math.min(hours, 24 - departs) }));
const anyMains = fc.record({ everyNights: int(1, 5), from: scaled(0, 23, 2), hours: scaled(1, 14, 2) });

export const anyTrip: fc.Arbitrary<Trip> = fc.record({
  month: int(1, 12),
  day: int(1, 28),
  nights: int(1, 14),
  startCharge: or(1, scaled(0.3, 1, 20)),
  bayOffset_C: int(0, 10),
  shade: anyShade,
  drives: or(null, anyDrives),
  mains: or(null, anyMains),
});

export const anyChemistry = fc.constantFrom("agm", "gel", "flooded", "lfp");

export const anyBank: fc.Arbitrary<Bank> = fc.record({
  chemistry: anyChemistry,
  nominal_V: fc.constantFrom(12, 24),
  capacity_Ah: int(20, 400),
  condition: or(1, scaled(0.3, 1, 20)),
  where: fc.constantFrom("inside", "outside"),
  reserve: or(null, scaled(0, 0.8, 20)),
  cutOff_V: fc.constant(null),
  absorption_V: fc.constant(null),
  restedVolts: fc.constant(null),
});

export const anyArray: fc.Arbitrary<SolarArray> = fc.record({
  name: fc.constant("Roof"),
  watts: int(20, 900),
  tilt_deg: or(0, int(0, 80)),
  azimuth_deg: int(0, 359),
  mount: fc.constantFrom("flush", "free", "bonded"),
  soiling: scaled(0, 0.3, 20),
  gamma_per_K: fc.constant(-0.0035),
});

export const anySolarCharger: fc.Arbitrary<SolarCharger> = fc.record({
  kind: fc.constantFrom("mppt", "pwm"),
  rated_A: int(5, 60),
});

const anyAppliance: fc.Arbitrary<Appliance> = fc
  .record({
    supply: fc.constantFrom("dc" as const, "ac" as const),
    watts: or(15, int(1, 1500)),
    standby_W: or(0, int(0, 6)),
    from: int(0, 23),
    length: scaled(0.25, 6, 4),
    duty: scaled(0.1, 1, 10),
    everyDays: int(1, 3),
    only: fc.constantFrom(null, null, "driving" as const, "camped" as const),
  })
  .map(({ from, length, duty, everyDays, ...rest }) => ({
    ...lamp,
    ...rest,
    use: [{ from, to: (from + length) % 24, duty: rest.watts > 300 ? duty / 10 : duty, everyDays }],
  }));

const anyCompressorFridge: fc.Arbitrary<CompressorFridge> = fc
  .record({
    compressor_W: int(35, 120),
    ratedShare: scaled(0.1, 0.8, 20),
    inside_C: int(1, 6),
    volume_L: int(20, 250),
    restock_kg_day: int(0, 4),
    freezerShare: or(0, scaled(0, 1, 5)),
    supply: fc.constantFrom("dc" as const, "ac" as const),
  })
  .map(({ ratedShare, ...rest }) => ({ ...familyFridge, ...rest, rated_Wh_day: 24 * rest.compressor_W * ratedShare }));

const anyAbsorptionFridge: fc.Arbitrary<AbsorptionFridge> = fc
  .record({
    burns: fc.constantFrom("gas" as const, "dc" as const, "ac" as const),
    element_dc_W: int(80, 200),
    gas_g_day: int(150, 350),
    onThermostat: fc.boolean(),
  })
  .map(({ onThermostat: on, ...rest }) => ({ ...threeWay, ...rest, thermostat: { gas: on, dc: on, ac: on } }));

export const anyLoad: fc.Arbitrary<Load> = fc.oneof(
  { arbitrary: anyAppliance, weight: 4 },
  { arbitrary: anyCompressorFridge, weight: 3 },
  { arbitrary: anyAbsorptionFridge, weight: 1 },
);

export const anyLoads = fc
  .array(anyLoad, { minLength: 1, maxLength: 4 })
  .map((loads) => loads.map((load, i) => ({ ...load, id: `load-${i + 1}` })));

const anySource = fc
  .record({ low: fc.boolean(), tenths: int(0, 12), lowShare: scaled(0, 1, 5), spare_A: int(5, 80) })
  .map(({ low, tenths, lowShare, spare_A }) => {
    const volts = 13.6 + tenths / 10;
    return { volts, low_V: low ? 12.5 : null, lowShare, spare_A };
  });
const anyCable = fc.record({
  kind: fc.constant("cable" as const),
  length_m: scaled(1, 12, 2),
  area_mm2: fc.constantFrom(2.5, 4, 6, 10, 16, 25),
  conductorClass: fc.constant(5 as const),
  temp_C: fc.constant(40),
});
const anyPath = anyCable.map((cable) => [{ kind: "fuse" as const, rated_A: 40 }, cable]);

export const anyRelay = fc.record({ kind: fc.constant("relay" as const), source: anySource, path: anyPath });

export const anyFeed: fc.Arbitrary<Feed> = fc.oneof(
  anyRelay,
  fc.record({
    kind: fc.constant("converter" as const),
    rated_A: int(10, 60),
    count: int(1, 2),
    efficiency: scaled(0.8, 0.95, 20),
    minInput_V: fc.constant(10.5),
    source: anySource,
    path: anyPath,
  }),
);

const anyInverter: fc.Arbitrary<Inverter> = fc.record({
  rated_W: int(300, 3000),
  surge_W: fc.constant(6000),
  idle_W: int(0, 25),
  peakEfficiency: fc.constant(null),
  on: fc.constantFrom("in-use", "always"),
});

/** A 24 V bank's vehicle gives 24 V. */
const atVolts = (feed: Feed, twelves: number): Feed => ({
  ...feed,
  source: {
    ...feed.source,
    volts: feed.source.volts * twelves,
    low_V: feed.source.low_V === null ? null : feed.source.low_V * twelves,
  },
});

export const anySetup: fc.Arbitrary<Setup> = fc
  .record({
    id: fc.constant("now"),
    name: fc.constant("Now"),
    bank: anyBank,
    arrays: fc.array(anyArray, { maxLength: 2 }),
    solarCharger: fc.oneof(fc.constant(null), { arbitrary: anySolarCharger, weight: 5 }),
    feed: or<Feed | null>(null, anyFeed),
    inverter: or<Inverter | null>(null, anyInverter),
    mainsCharger: or<{ rated_A: number } | null>(null, fc.record({ rated_A: int(5, 60) })),
    loads: anyLoads,
    price: fc.constant(0),
    mass_kg: fc.constant(0),
  })
  .map((setup) => ({
    ...setup,
    feed: setup.feed === null ? null : atVolts(setup.feed, setup.bank.nominal_V / 12),
  }));

export const anyStudy: fc.Arbitrary<Study> = fc.record({
  climate: anyClimate,
  trip: anyTrip,
  setups: fc.array(anySetup, { minLength: 1, maxLength: 1 }),
});
