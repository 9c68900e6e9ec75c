import fc from "fast-check";
import type {
  ChargePicture,
  DayPicture,
  RunPicture,
  SizePicture,
  UpgradesPicture,
  UsesPicture,
  YearPicture,
} from "@stayput/charts";

const tenths = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 }).map((n) => n / 10);
const share = fc.integer({ min: 0, max: 100 }).map((n) => n / 100);
const days = fc.option(tenths(0, 60), { freq: 3 });
const name = fc.oneof(
  fc.constantFrom("Now", "Lithium and 400 W", "A very long name that will not fit in any margin"),
  fc.string({ maxLength: 30 }),
);
const ids = <T>(of: fc.Arbitrary<T>, maxLength: number) =>
  fc.array(of, { maxLength }).map((rows) => rows.map((row, i) => ({ ...row, id: `row-${i}` })));
const spread = fc.tuple(tenths(0, 70), tenths(0, 70), tenths(0, 70)).map((three) => {
  const [p10, p50, p90] = [...three].sort((a, b) => a - b).map((d) => (d >= 60 ? null : d));
  return { p10: p10!, p50: p50!, p90: p90! };
});

const series = (length: number) => fc.array(share, { minLength: length, maxLength: length });
const band = fc
  .constantFrom(0, 1, 2, 25, 100)
  .chain((n) => fc.record({ p10: series(n), p50: series(n), p90: series(n), average: series(n), dark: series(n) }));

export const anyCharge: fc.Arbitrary<ChargePicture> = fc.record({
  setups: ids(fc.record({ name, charge: band, days: spread, reserve: fc.option(share), foodPasses5C_days: days }), 6),
  nights: fc.integer({ min: 1, max: 60 }),
  horizon_days: fc.constant(60),
  dark: fc.option(fc.record({ from_h: tenths(0, 24), to_h: tenths(0, 24) })),
});

const Wh = tenths(0, 500);
export const anyDay: fc.Arbitrary<DayPicture> = fc.record({
  hours: fc.array(
    fc.record({
      in: fc.record({ sun_Wh: Wh, road_Wh: Wh, mains_Wh: Wh, sunUnused_Wh: Wh }),
      out: ids(fc.record({ name, Wh }), 9),
    }),
    { maxLength: 24 },
  ),
  dark: fc.option(fc.record({ from_h: tenths(0, 24), to_h: tenths(0, 24) })),
});

export const anyUses: fc.Arbitrary<UsesPicture> = fc.record({
  setup: name,
  days,
  horizon_days: fc.constant(60),
  rows: ids(fc.record({ name, Wh_day: tenths(0, 9000), without_days: fc.option(days, { nil: undefined }) }), 16),
});

export const anyYear: fc.Arbitrary<YearPicture> = fc.record({
  setups: ids(
    fc.record({
      name,
      months: fc
        .array(fc.record({ average: days, drawn: spread, chance: share }), { minLength: 12, maxLength: 12 })
        .map((rows) => rows.map((row, m) => ({ ...row, month: m + 1 }))),
    }),
    6,
  ),
  horizon_days: fc.constant(60),
  nights: fc.option(fc.integer({ min: 1, max: 60 })),
  month: fc.option(fc.integer({ min: 1, max: 12 })),
});

const ladder = (step: number) =>
  fc
    .uniqueArray(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 7 })
    .map((rungs) => rungs.sort((a, b) => a - b).map((n) => n * step));
const sizes = { bank_Ah: tenths(0, 800), array_W: tenths(0, 1600) };
export const anySize: fc.Arbitrary<SizePicture> = fc.record({
  grid: fc.option(
    fc.tuple(ladder(50), ladder(100)).chain(([banks_Ah, arrays_W]) =>
      fc.record({
        chemistry: fc.constantFrom("agm", "gel", "flooded", "lfp"),
        banks_Ah: fc.constant(banks_Ah),
        arrays_W: fc.constant(arrays_W),
        chance: fc.array(series(arrays_W.length), { minLength: banks_Ah.length, maxLength: banks_Ah.length }),
      }),
    ),
  ),
  points: fc.array(
    fc.record({
      ...sizes,
      chemistry: fc.constantFrom("agm", "gel", "flooded", "lfp"),
      chance: share,
      price: fc.option(tenths(0, 9000)),
      mass_kg: fc.option(tenths(-40, 90)),
    }),
    { maxLength: 8 },
  ),
  setups: ids(fc.record({ ...sizes, name }), 6),
  asked: fc.record({ nights: fc.integer({ min: 1, max: 60 }), chance: share }),
});

export const anyRun: fc.Arbitrary<RunPicture> = fc.record({
  points: fc.array(fc.record({ label: name, volts: tenths(0, 30), piece: fc.option(name, { nil: undefined }) }), {
    maxLength: 8,
  }),
  amps: tenths(0, 80),
  limitedBy: name,
  minimum_V: fc.option(tenths(10, 13), { nil: undefined }),
});

export const anyUpgrades: fc.Arbitrary<UpgradesPicture> = fc.record({
  from_days: days,
  together_days: days,
  horizon_days: fc.constant(60),
  changes: ids(fc.record({ name, share_days: tenths(-20, 60), alone_days: days }), 6),
});
