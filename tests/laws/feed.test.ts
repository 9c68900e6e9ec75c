import fc from "fast-check";
import { expect, it } from "vitest";
import { wiring } from "../../packages/sim/src/answers/wiring.ts";
import { momentsOf } from "../../packages/sim/src/answers/wiringMoments.ts";
import { bankModel } from "../../packages/sim/src/bank/index.ts";
import {
  cableResistance_Ohm,
  class2Plain,
  class5Plain,
  class5Tinned,
  converterInput_A,
  converterLimit,
  converterMost_A,
  onTheWayThrough_A,
  pathFlows,
  perKm_Ohm,
  pieceLimit_A,
  prepareFeed,
  relayAmps_A,
} from "../../packages/sim/src/feed/index.ts";
import type { Bank, ConverterFeed, Feed, PathPiece, RelayFeed, Setup } from "../../packages/sim/src/study.ts";

/** Scaled integers, so that small and large values are met alike. */
const scaled = (low: number, high: number, perUnit: number) =>
  fc.integer({ min: Math.round(low * perUnit), max: Math.round(high * perUnit) }).map((n) => n / perUnit);

const cable: fc.Arbitrary<PathPiece> = fc.record({
  kind: fc.constant("cable" as const),
  length_m: scaled(0, 20, 10),
  area_mm2: scaled(0.5, 120, 10),
  conductorClass: fc.constantFrom(2 as const, 5 as const),
  temp_C: fc.integer({ min: -10, max: 90 }),
});
const fuse = scaled(5, 150, 1).map((rated_A): PathPiece => ({ kind: "fuse", rated_A }));
const plug = fc.record({
  kind: fc.constant("plug" as const),
  limit_A: scaled(10, 120, 1),
  resistance_mOhm: scaled(0, 20, 10),
});
const tapped = scaled(0, 20, 1).map((amps): PathPiece => ({ kind: "load", amps }));
const path = fc.array(fc.oneof(cable, cable, fuse, plug, tapped), { minLength: 1, maxLength: 6 });
const source = fc.record({
  volts: scaled(13, 15, 100),
  low_V: fc.option(scaled(10.5, 13, 100)),
  lowShare: scaled(0, 1, 100),
  spare_A: scaled(0, 150, 1),
});
const converter: fc.Arbitrary<ConverterFeed> = fc.record({
  kind: fc.constant("converter" as const),
  rated_A: scaled(5, 120, 1),
  count: fc.integer({ min: 1, max: 3 }),
  efficiency: scaled(0.7, 1, 100),
  minInput_V: scaled(0, 13, 100),
  source,
  path,
});
const relay: fc.Arbitrary<RelayFeed> = fc.record({ kind: fc.constant("relay" as const), source, path });
const bank: fc.Arbitrary<Bank> = fc.record({
  chemistry: fc.constantFrom("agm" as const, "gel" as const, "flooded" as const, "lfp" as const),
  nominal_V: fc.constant(12 as const),
  capacity_Ah: scaled(50, 600, 1),
  condition: scaled(0.3, 1, 100),
  where: fc.constant("inside" as const),
  reserve: fc.constant(0.5),
  cutOff_V: fc.constant(null),
  absorption_V: fc.constant(null),
  restedVolts: fc.constant(null),
});
const bus_V = scaled(11, 14.8, 100);

/** Rounding of sums and products of a few hundred. */
const eps = 1e-9;
const changed = (pieces: readonly PathPiece[], change: (piece: PathPiece & { kind: "cable" }) => PathPiece) =>
  pieces.map((piece) => (piece.kind === "cable" ? change(piece) : piece));
const thicker = (pieces: readonly PathPiece[], times: number) =>
  changed(pieces, (piece) => ({ ...piece, area_mm2: piece.area_mm2 * times }));
const shorter = (pieces: readonly PathPiece[], times: number) =>
  changed(pieces, (piece) => ({ ...piece, length_m: piece.length_m / times }));
const times = scaled(1, 4, 10);

it("more copper never resists more, in any table", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(class2Plain, class5Plain, class5Tinned),
      scaled(0.2, 400, 10),
      scaled(0, 100, 10),
      (table, area_mm2, more) => {
        expect(perKm_Ohm(table, area_mm2 + more)).toBeLessThanOrEqual(perKm_Ohm(table, area_mm2) + eps);
      },
    ),
    { numRuns: 1000 },
  );
});

it("resistance is in proportion to length and rises with temperature", () => {
  fc.assert(
    fc.property(scaled(0.1, 50, 10), scaled(0.5, 200, 10), scaled(-20, 100, 1), (length_m, area_mm2, temp_C) => {
      const one = { length_m, area_mm2, temp_C, conductorClass: 5 as const };
      const R = cableResistance_Ohm(one);
      expect(cableResistance_Ohm({ ...one, length_m: 2 * length_m })).toBeCloseTo(2 * R, 9);
      expect(cableResistance_Ohm({ ...one, temp_C: temp_C + 10 })).toBeGreaterThan(R);
    }),
  );
});

it("on every piece energy in is energy out, heat, and what is fed aside", () => {
  fc.assert(
    fc.property(path, scaled(10, 15, 100), scaled(0, 150, 10), (pieces, source_V, charge_A) => {
      const flows = pathFlows(pieces, source_V, charge_A);
      for (const { in_W, out_W, heat_W, aside_W } of flows) {
        expect(heat_W).toBeGreaterThanOrEqual(-eps);
        expect(in_W).toBeCloseTo(out_W + heat_W + aside_W, 6);
      }
      flows.slice(1).forEach((flow, i) => expect(flow.in_W).toBeCloseTo(flows[i]!.out_W, 6));
    }),
  );
});

it("a converter is never NaN, never over its rating, and never over a limit of its path, with no solution as with one", () => {
  fc.assert(
    fc.property(converter, scaled(0, 16, 100), bus_V, (feed, source_V, bus) => {
      const circuit = prepareFeed(feed);
      const onTheWay_A = onTheWayThrough_A(feed.path);
      const { output_A, input_A, input_V } = converterLimit(circuit, source_V, bus);
      expect(converterMost_A(circuit, source_V, bus)).toBe(output_A);
      expect(output_A).toBeGreaterThanOrEqual(0);
      expect(output_A).toBeLessThanOrEqual(feed.rated_A * feed.count + eps);
      expect(input_A).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(input_V)).toBe(true);
      expect(input_A + onTheWay_A[0]!).toBeLessThanOrEqual(Math.max(feed.source.spare_A, onTheWay_A[0]!) + eps);
      feed.path.forEach((piece, i) => {
        const limit_A = pieceLimit_A(piece) ?? Infinity;
        expect(input_A + onTheWay_A[i]!).toBeLessThanOrEqual(Math.max(limit_A, onTheWay_A[i]!) + eps);
      });
      if (output_A > 0) expect(input_V).toBeGreaterThanOrEqual(Math.max(feed.minInput_V, source_V / 2) - eps);
      expect(input_V * input_A * feed.efficiency).toBeCloseTo(output_A * bus, 6);
    }),
    { numRuns: 1000 },
  );
});

it("what a limit holds is truly at that limit", () => {
  fc.assert(
    fc.property(converter, scaled(8, 16, 100), bus_V, (feed, source_V, bus) => {
      const circuit = prepareFeed(feed);
      const { output_A, input_A, input_V, limitedBy, limit } = converterLimit(circuit, source_V, bus);
      if (limitedBy === "converter") expect(output_A).toBe(feed.rated_A * feed.count);
      if (limitedBy === "cable") expect(input_V).toBeCloseTo(limit.value, 9);
      if (limitedBy === "fuse" || limitedBy === "plug") expect(input_A).toBeCloseTo(limit.value, 9);
      if (limitedBy === "source") expect(input_A).toBeCloseTo(limit.unit === "A" ? limit.value : 0, 9);
    }),
    { numRuns: 500 },
  );
});

it("higher source volts never give a converter less, higher bus volts never more", () => {
  fc.assert(
    fc.property(converter, scaled(8, 15, 100), scaled(0, 2, 100), bus_V, (feed, source_V, more, bus) => {
      const circuit = prepareFeed(feed);
      const most_A = converterMost_A(circuit, source_V, bus);
      expect(converterMost_A(circuit, source_V + more, bus)).toBeGreaterThanOrEqual(most_A - eps);
      expect(converterMost_A(circuit, source_V, bus + more)).toBeLessThanOrEqual(most_A + eps);
    }),
    { numRuns: 500 },
  );
});

it("thicker or shorter cable never gives fewer amps, through a converter or a relay", () => {
  fc.assert(
    fc.property(converter, relay, times, bus_V, (feed, plain, by, bus) => {
      const converted = (pieces: readonly PathPiece[]) => {
        const circuit = prepareFeed({ ...feed, path: pieces });
        return converterMost_A(circuit, circuit.shares[0]!.source_V, bus);
      };
      const relayed = (pieces: readonly PathPiece[]) => {
        const circuit = prepareFeed({ ...plain, path: pieces });
        return relayAmps_A(circuit, circuit.shares[0]!.source_V, bus, 0.004);
      };
      for (const better of [thicker, shorter]) {
        expect(converted(better(feed.path, by))).toBeGreaterThanOrEqual(converted(feed.path) - eps);
        expect(relayed(better(plain.path, by))).toBeGreaterThanOrEqual(relayed(plain.path) - eps);
      }
    }),
    { numRuns: 500 },
  );
});

it("the quadratic's root is the lower one and carries the power exactly", () => {
  fc.assert(
    fc.property(scaled(1, 1500, 1), scaled(8, 15, 100), scaled(0, 0.2, 10_000), (watts, source_V, ohm) => {
      const input_A = converterInput_A(watts, 0.9, source_V, ohm);
      expect(input_A === null).toBe(source_V ** 2 - (4 * ohm * watts) / 0.9 < 0);
      if (input_A === null) return;
      expect(input_A * (source_V - input_A * ohm) * 0.9).toBeCloseTo(watts, 6);
      expect(input_A * ohm).toBeLessThanOrEqual(source_V / 2 + eps);
    }),
  );
});

it("every moment of a charge into a bank is finite, within acceptance, and better with better cable", () => {
  fc.assert(
    fc.property(fc.oneof(converter, relay), bank, times, (feed: Feed, of, by) => {
      const model = bankModel(of, 25, 0.1);
      const moments = momentsOf(feed, model);
      const better = momentsOf({ ...feed, path: thicker(feed.path, by) }, model);
      moments.forEach((moment, i) => {
        const { delivered_A, input_A, gain_A, limit } = moment;
        for (const value of [delivered_A, input_A, gain_A]) expect(value).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(limit.value)).toBe(true);
        expect(delivered_A).toBeLessThanOrEqual(model.bulk_A + eps);
        expect(better[i]!.delivered_A).toBeGreaterThanOrEqual(delivered_A - 1e-6);
        for (const { volts_V, heat_W } of moment.points) {
          expect(Number.isFinite(volts_V)).toBe(true);
          expect(heat_W).toBeGreaterThanOrEqual(-1e-6);
        }
        if (feed.kind === "relay") expect(delivered_A).toBeLessThanOrEqual(feed.source.spare_A + eps);
      });
    }),
    { numRuns: 200 },
  );
});

it("answers for any feed without NaN, and never a fuse below the running current or above the cable", () => {
  fc.assert(
    fc.property(fc.oneof(converter, relay), bank, (feed, of) => {
      const [answer] = wiring([setupOf(feed, of)], () => 25);
      expect(
        JSON.stringify(answer, (_, value: unknown) =>
          typeof value === "number" && !Number.isFinite(value) ? "NaN" : value,
        ),
      ).not.toContain("NaN");
      for (const { rated_A, running_A, ampacity_A } of answer!.charge!.fuses) {
        if (rated_A === null) continue;
        expect(rated_A).toBeGreaterThan(running_A);
        if (ampacity_A !== null) expect(rated_A).toBeLessThanOrEqual(ampacity_A);
      }
      for (const size of answer!.charge!.sizes) {
        if (size.area_mm2 !== null && size.standard_mm2 !== null) {
          expect(size.standard_mm2).toBeGreaterThanOrEqual(size.area_mm2 * 0.998);
        }
      }
    }),
    { numRuns: 200 },
  );
});

function setupOf(feed: Feed, of: Bank): Setup {
  return {
    id: "one",
    name: "One",
    bank: of,
    arrays: [],
    solarCharger: null,
    feed,
    inverter: null,
    mainsCharger: null,
    loads: [],
    price: 0,
    mass_kg: 0,
  };
}
