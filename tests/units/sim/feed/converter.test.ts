import { describe, expect, it } from "vitest";
import { converterLimit, converterMost_A, prepareFeed } from "../../../../packages/sim/src/feed/index.ts";
import type { ConverterFeed, PathPiece } from "../../../../packages/sim/src/study.ts";

const cable = (area_mm2: number, length_m = 6): PathPiece => ({
  kind: "cable",
  length_m,
  area_mm2,
  conductorClass: 5,
  temp_C: 20,
});
const feed = (path: PathPiece[], over: Partial<ConverterFeed> = {}): ConverterFeed => ({
  kind: "converter",
  rated_A: 25,
  count: 1,
  efficiency: 0.88,
  minInput_V: 11.5,
  source: { volts: 14.2, low_V: null, lowShare: 0.8, spare_A: 100 },
  path,
  ...over,
});

describe("a converter behind its path", () => {
  it("reaches its rating on thick cable and says so", () => {
    const held = converterLimit(prepareFeed(feed([cable(16)])), 14.2, 14.4);
    expect(held.output_A).toBe(25);
    expect(held.limitedBy).toBe("converter");
    expect(held.input_A * held.input_V).toBeCloseTo((25 * 14.4) / 0.88, 6);
  });

  it("names thin cable as the limit, with the volts that prove it", () => {
    const held = converterLimit(prepareFeed(feed([cable(2.5)])), 14.2, 14.4);
    expect(held.limitedBy).toBe("cable");
    expect(held.limit).toEqual({ name: "volts left at the converter", value: 11.5, unit: "V" });
    expect(held.input_V).toBeCloseTo(11.5, 9);
    expect(held.input_A).toBeCloseTo((14.2 - 11.5) / ((2 * 6 * 7.98) / 1000), 9);
  });

  it("backs off where no current carries the power, at half the source's volts", () => {
    const thin = prepareFeed(feed([cable(0.5, 20)], { minInput_V: 0 }));
    const held = converterLimit(thin, 12, 14.4);
    expect(held.limitedBy).toBe("cable");
    expect(held.input_V).toBeCloseTo(6, 9);
    expect(held.output_A).toBeCloseTo((0.88 * 12 ** 2) / (4 * thin.resistance_Ohm) / 14.4, 9);
  });

  it.each([
    ["fuse", { kind: "fuse", rated_A: 20 }, "20 A fuse"],
    ["plug", { kind: "plug", limit_A: 15, resistance_mOhm: 0.5, name: "lamp plug pin" }, "lamp plug pin"],
  ] as const)("stops at a %s", (by, piece, name) => {
    const held = converterLimit(prepareFeed(feed([piece, cable(16)])), 14.2, 14.4);
    expect(held.limitedBy).toBe(by);
    expect(held.limit.name).toBe(name);
    expect(held.input_A).toBe(held.limit.value);
  });

  it("gives nothing from a source under its minimum, and says that the source is why", () => {
    const held = converterLimit(prepareFeed(feed([cable(16)])), 11.2, 14.4);
    expect(held).toMatchObject({ output_A: 0, input_A: 0, limitedBy: "source" });
  });

  it("adds converters in parallel on the same path", () => {
    const pair = prepareFeed(feed([cable(35)], { count: 2 }));
    expect(converterMost_A(pair, 14.2, 14.4)).toBe(50);
  });

  it("shares its path with a load fed on the way", () => {
    const path: PathPiece[] = [{ kind: "fuse", rated_A: 40 }, cable(16, 3), { kind: "load", amps: 14 }, cable(16, 3)];
    const circuit = prepareFeed(feed(path));
    expect(circuit.limit).toEqual({ by: "fuse", name: "40 A fuse", limit_A: 26 });
    expect(circuit.spare_A).toBe(86);
    expect(circuit.shares[0]!.source_V).toBeCloseTo(14.2 - 14 * ((2 * 3 * 1.21) / 1000), 9);
  });

  it.each([Number.NaN, 0, -1])("answers 0, never NaN, for a bus at %s volts", (bus_V) => {
    expect(converterMost_A(prepareFeed(feed([cable(16)])), 14.2, bus_V)).toBe(0);
  });
});
