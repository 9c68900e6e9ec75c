import { parseJob, type Job, type JobInput } from "@stayput/job";
import fc from "fast-check";

/** A quantity from `min` to `max` in steps of `step`: integers scaled, since drawn doubles crowd about nought. */
export function scaled(min: number, max: number, step = 1): fc.Arbitrary<number> {
  const steps = Math.round((max - min) / step);
  return fc.integer({ min: 0, max: steps }).map((n) => Number(Math.min(max, min + n * step).toPrecision(12)));
}

const awkward = [
  "<img src=x onerror=alert(1)>",
  "\u202Eevil\u202C",
  "🧊❄️",
  "=1+1",
  "@cmd",
  '"quoted", too',
  "Ünïcødé",
  "النص",
];

/** One line of text as people, and people of ill will, type it. */
export const anyLine = (max: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constantFrom("Roof", "LED lights", ...awkward).map((text) => text.slice(0, max)),
    fc
      .string({ unit: "grapheme", minLength: 1, maxLength: max })
      .map((text) => text.replace(/[\p{Cc}\p{Cs}\u2028\u2029]/gu, "").slice(0, max) || "x"),
  );

const maybe = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(arbitrary, { nil: undefined });
const orNull = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | null | undefined> =>
  fc.oneof(maybe(arbitrary), fc.constant(null));

/** An object less the fields drawn as undefined, as JSON has none. */
const object = <T>(shape: { [K in keyof T]: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> =>
  fc.record(shape).map((value) => JSON.parse(JSON.stringify(value)) as T);

const clock = scaled(0, 24, 0.25);
const span = fc
  .tuple(clock, clock)
  .map(([from, to]) => ({ from, to: from === to || from - to === 24 ? (from + 5) % 24 : to }));
const monthDay = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 31 }))
  .map(([month, day]) => [month, Math.min(day, new Date(2024, month, 0).getDate())]) // leap day and all
  .map((pair) => pair.map((n) => String(n).padStart(2, "0")).join("-"));
const share = scaled(0, 1, 0.01);

const anyClimate = fc
  .array(fc.tuple(scaled(0.2, 9, 0.01), scaled(-10, 40, 0.1), scaled(0, 20, 0.1)), { minLength: 12, maxLength: 12 })
  .map((months) => ({
    ghi_kWh_m2_day: months.map(([ghi]) => ghi),
    tmax_C: months.map(([, tmax]) => tmax),
    tmin_C: months.map(([, tmax, range]) => Number((tmax - range).toFixed(1))),
  }));

const latitude = scaled(-60, 72, 0.01);
const longitude = scaled(-180, 180, 0.01);

/** A place in any of its forms; ids are of places that the catalogue has. */
export const anyPlace: fc.Arbitrary<JobInput["place"]> = fc.oneof(
  fc.constantFrom("za-upington", "au-alice-springs", "au-katherine").map((id) => ({ id })),
  object({
    name: anyLine(120),
    latitude,
    longitude,
    elev_m: maybe(scaled(0, 3000)),
    utcOffset_h: maybe(scaled(-12, 14, 0.5)),
  }),
  object({ name: anyLine(120), latitude, sky: fc.constantFrom("clear" as const, "mixed" as const, "dull" as const) }),
  fc
    .tuple(
      object({ name: anyLine(120), latitude, longitude: maybe(longitude), dayToDay: maybe(scaled(0, 0.9, 0.01)) }),
      anyClimate,
    )
    .map(([point, climate]) => ({ ...point, ...climate })),
);

const anyTrip = object({
  arrive: monthDay,
  nights: fc.integer({ min: 1, max: 60 }),
  startCharge: maybe(share),
  bayOffset_C: maybe(scaled(0, 25, 0.5)),
  shade: maybe(
    fc.array(
      fc.tuple(span, share).map(([hours, lost]) => ({ ...hours, lost })),
      { maxLength: 3 },
    ),
  ),
  drives: orNull(
    object({
      everyNights: fc.integer({ min: 1, max: 60 }),
      hours: scaled(0.25, 12, 0.25),
      departs: maybe(scaled(0, 12, 0.5)),
    }),
  ),
  mains: orNull(
    object({ everyNights: fc.integer({ min: 1, max: 60 }), hours: scaled(0.5, 24, 0.5), from: maybe(clock) }),
  ),
});

const anyUse = fc.oneof(
  fc
    .tuple(span, object({ duty: maybe(share), everyDays: maybe(fc.integer({ min: 1, max: 7 })) }))
    .map(([a, b]) => ({ ...a, ...b })),
  object({
    at: scaled(0, 23.75, 0.25),
    minutes: scaled(0.5, 1440, 0.5),
    everyDays: maybe(fc.integer({ min: 1, max: 7 })),
  }),
);
const supply = fc.constantFrom("dc" as const, "ac" as const);
const only = orNull(fc.constantFrom("driving" as const, "camped" as const));

const anyAppliance = fc.tuple(scaled(0, 3000), scaled(1, 5, 0.5)).chain(([watts, surge]) =>
  object({
    name: anyLine(120),
    kind: fc.constant("appliance" as const),
    supply,
    watts: fc.constant(watts),
    count: maybe(fc.integer({ min: 1, max: 9 })),
    standby_W: maybe(scaled(0, 20, 0.1)),
    surge_W: orNull(fc.constant(watts * surge)),
    use: fc.array(anyUse, { maxLength: 4 }),
    outside: orNull(fc.constantFrom({ above_C: 26 }, { below_C: 5 }, { above_C: -5, below_C: 12 })),
    only,
  }),
);

const anyCompressorFridge = object({
  name: anyLine(120),
  kind: fc.constant("compressor-fridge" as const),
  supply,
  rated_Wh_day: scaled(150, 1400),
  ratedAt_C: maybe(scaled(25, 43)),
  inside_C: maybe(scaled(-20, 8)),
  compressor_W: orNull(scaled(60, 200)),
  volume_L: maybe(scaled(15, 400)),
  restock_kg_day: maybe(scaled(0, 10, 0.1)),
  freezerShare: maybe(share),
  cutOut_V: orNull(scaled(9, 12, 0.1)),
  only,
});

const anyAbsorptionFridge = object({
  name: anyLine(120),
  kind: fc.constant("absorption-fridge" as const),
  burns: maybe(fc.constantFrom("gas" as const, "dc" as const, "ac" as const)),
  element_dc_W: maybe(scaled(50, 300)),
  element_ac_W: maybe(scaled(50, 300)),
  gas_g_day: maybe(scaled(100, 600)),
  controls_A: maybe(scaled(0, 2, 0.1)),
  volume_L: maybe(scaled(30, 250)),
  thermostat: maybe(object({ gas: maybe(fc.boolean()), dc: maybe(fc.boolean()) })),
});

const anyLoad = fc.oneof(
  { weight: 4, arbitrary: anyAppliance },
  { weight: 1, arbitrary: anyCompressorFridge },
  { weight: 1, arbitrary: anyAbsorptionFridge },
);

/** Loads whose ids begin with a word, each its own. */
const anyLoads = (word: string, maxLength: number): fc.Arbitrary<JobInput["loads"]> =>
  fc.array(anyLoad, { maxLength }).map((loads) => loads.map((load, i) => ({ ...load, id: `${word}-${i}` })));

const anyPiece = fc.oneof(
  object({ kind: fc.constant("fuse" as const), rated_A: scaled(5, 300), name: maybe(anyLine(80)) }),
  fc
    .tuple(
      object({
        kind: fc.constant("cable" as const),
        length_m: scaled(0.1, 30, 0.1),
        class: maybe(fc.constantFrom(2 as const, 5 as const)),
        temp_C: maybe(scaled(-10, 90)),
      }),
      fc.oneof(
        scaled(1, 120, 0.5).map((area_mm2) => ({ area_mm2 })),
        fc.constantFrom("12", "8", "4", "2/0").map((awg) => ({ awg })),
        fc.constantFrom(3, 4, 6).map((autoSize_mm) => ({ autoSize_mm })),
      ),
    )
    .map(([cable, size]) => ({ ...cable, ...size })),
  object({ kind: fc.constant("plug" as const), limit_A: scaled(5, 175), resistance_mOhm: maybe(scaled(0, 20, 0.1)) }),
  object({ kind: fc.constant("load" as const), amps: scaled(0, 30, 0.5) }),
);
const anyPath = fc.array(anyPiece, { minLength: 1, maxLength: 6 });

const anySource = object({
  volts: orNull(scaled(13, 15, 0.1)),
  low_V: orNull(scaled(12, 13, 0.1)),
  lowShare: maybe(share),
  spare_A: maybe(scaled(0, 150)),
  alternator: orNull(object({ rated_A: scaled(40, 250), vehicle_A: maybe(scaled(5, 60)) })),
});

const anyFeed = fc.oneof(
  object({ kind: fc.constant("relay" as const), source: maybe(anySource), path: anyPath }),
  object({
    kind: fc.constant("converter" as const),
    rated_A: scaled(10, 120),
    count: maybe(fc.integer({ min: 1, max: 3 })),
    efficiency: maybe(scaled(0.8, 0.98, 0.01)),
    minInput_V: maybe(scaled(10, 13, 0.1)),
    source: maybe(anySource),
    path: anyPath,
  }),
);

/** The best efficiency lies under what the idle draw alone leaves of the rating. */
const anyInverter = fc.tuple(scaled(150, 5000), scaled(1, 3, 0.5), scaled(0, 40)).chain(([rated_W, surge, idle_W]) =>
  object({
    rated_W: fc.constant(rated_W),
    surge_W: orNull(fc.constant(rated_W * surge)),
    idle_W: orNull(fc.constant(idle_W)),
    peakEfficiency: orNull(scaled(0.7, Math.min(0.97, rated_W / (rated_W + Math.max(35, idle_W)) - 0.01), 0.01)),
    on: maybe(fc.constantFrom("in-use" as const, "always" as const)),
  }),
);

const anyBank = fc.constantFrom(12 as const, 24 as const).chain((nominal_V) =>
  object({
    chemistry: fc.constantFrom("agm" as const, "gel" as const, "flooded" as const, "lfp" as const),
    nominal_V: nominal_V === 12 ? maybe(fc.constant(nominal_V)) : fc.constant(nominal_V),
    capacity_Ah: scaled(20, 1200),
    condition: maybe(scaled(0.1, 1, 0.01)),
    where: maybe(fc.constantFrom("inside" as const, "outside" as const)),
    reserve: orNull(scaled(0, 0.95, 0.01)),
    cutOff_V: orNull(scaled(10, 12, 0.1).map((volts) => (volts * nominal_V) / 12)),
    absorption_V: orNull(scaled(13.8, 14.8, 0.1).map((volts) => (volts * nominal_V) / 12)),
    restedVolts: orNull(
      scaled(11, 12, 0.1).map((empty) => [
        { share: 0, volts: empty },
        { share: 0.5, volts: 12.2 },
        { share: 1, volts: 12.9 },
      ]),
    ),
  }),
);

const anyArray = object({
  name: maybe(anyLine(80)),
  watts: scaled(20, 1500),
  tilt_deg: maybe(scaled(0, 90)),
  azimuth_deg: orNull(scaled(0, 360)),
  mount: maybe(fc.constantFrom("flush" as const, "free" as const, "bonded" as const)),
  soiling: maybe(scaled(0, 0.5, 0.01)),
  gamma_per_K: maybe(scaled(-0.006, 0, 0.0001)),
});

const anySetup = (loads: number) =>
  fc
    .tuple(
      object({
        name: anyLine(120),
        bank: anyBank,
        arrays: maybe(fc.array(anyArray, { maxLength: 3 })),
        solarCharger: orNull(
          object({ kind: fc.constantFrom("mppt" as const, "pwm" as const), rated_A: scaled(5, 150) }),
        ),
        feed: orNull(anyFeed),
        inverter: orNull(anyInverter),
        mainsCharger: orNull(object({ rated_A: scaled(5, 120) })),
        price: maybe(scaled(0, 100000)),
        mass_kg: maybe(scaled(-100, 300, 0.5)),
      }),
      fc.subarray(Array.from({ length: loads }, (_, i) => `load-${i}`)),
      anyLoads("added", 2),
      anyPath,
    )
    .map(([setup, drop, add, path]) => ({
      ...setup,
      ...(drop.length + add.length > 0 ? { loads: { drop, add } } : {}),
      ...(add[0] === undefined ? {} : { runs: [{ kind: "fridge-feed" as const, path, load: add[0].id }] }),
    }));

const anySizing = object({
  nights: orNull(fc.integer({ min: 1, max: 60 })),
  chance: maybe(scaled(0.05, 0.99, 0.01)),
  months: maybe(fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 12 })),
  roof_W: orNull(scaled(100, 2000)),
  budget: orNull(scaled(0, 100000)),
  banks: maybe(
    fc.array(
      object({
        chemistry: fc.constantFrom("agm" as const, "lfp" as const),
        capacity_Ah: scaled(50, 800),
        price: orNull(scaled(0, 50000)),
      }),
      {
        maxLength: 5,
      },
    ),
  ),
  panels: maybe(fc.array(object({ watts: scaled(50, 500), most: fc.integer({ min: 1, max: 6 }) }), { maxLength: 3 })),
});

/** A valid job as people might write it: any field with a default may be left out. */
export const anyJobInput: fc.Arbitrary<JobInput> = anyLoads("load", 6).chain((loads) =>
  fc
    .tuple(
      object({
        format: fc.constant("stayput-job" as const),
        version: fc.constant(1 as const),
        title: anyLine(200),
        about: maybe(anyLine(300)),
        customer: maybe(
          object({ name: maybe(anyLine(200)), notes: maybe(anyLine(300).map((text) => `${text}\n\t…`)) }),
        ),
        currency: orNull(fc.constantFrom("ZAR", "AUD", "EUR")),
        place: anyPlace,
        trip: anyTrip,
        payload_kg: orNull(scaled(0, 900)),
        sizing: orNull(anySizing),
        match: maybe(
          fc.array(
            object({
              flatOnMorning: fc.integer({ min: 1, max: 20 }),
              arrived: orNull(monthDay),
              place: orNull(anyPlace),
            }),
            {
              maxLength: 2,
            },
          ),
        ),
      }),
      fc.array(anySetup(loads.length), { minLength: 1, maxLength: 4 }),
    )
    .map(([job, setups]) => ({ ...job, loads, setups: setups.map((setup, i) => ({ ...setup, id: `setup-${i}` })) })),
);

/** A valid job, parsed: every default filled in. A draw that the parser refuses is an error of this file or of the parser. */
export const anyJob: fc.Arbitrary<Job> = anyJobInput.map((input) => {
  const parsed = parseJob(input);
  if (!parsed.ok) throw new Error(parsed.faults.map(({ message }) => message).join("\n"));
  return parsed.job;
});
