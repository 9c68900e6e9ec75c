import { describe, expect, it } from "vitest";
import { arrayCurrent_A, arrayOutput_W } from "../../../../packages/sim/src/array/index.ts";
import type { SolarArray } from "../../../../packages/sim/src/study.ts";

const roof: SolarArray = {
  name: "Roof",
  watts: 200,
  tilt_deg: 0,
  azimuth_deg: 0,
  mount: "free",
  soiling: 0.1,
  gamma_per_K: -0.004,
};
const one = (value: number): Float64Array => Float64Array.of(value);
const output = (array: SolarArray, poa: number, air: number): number => {
  const out = new Float64Array(1);
  arrayOutput_W(array, one(poa), one(air), out);
  return out[0] ?? NaN;
};
const current = (array: SolarArray, nominal_V: 12 | 24, poa: number, air: number): number => {
  const out = new Float64Array(1);
  arrayCurrent_A(array, nominal_V, one(poa), one(air), out);
  return out[0] ?? NaN;
};

describe("an array's power", () => {
  it("is its rating, less dirt and wiring, with its cells at 25 °C", () => {
    expect(output(roof, 1000, 25 - 20.8)).toBeCloseTo(200 * 0.9 * 0.97, 9);
  });
  it("falls with the warmth of its cells by γ", () => {
    expect(output(roof, 1000, 35 - 20.8)).toBeCloseTo(200 * 0.9 * 0.97 * 0.96, 9);
  });
  it("is less on a roof than on a stand, and least glued down", () => {
    const [free, flush, bonded] = (["free", "flush", "bonded"] as const).map((mount) =>
      output({ ...roof, mount }, 800, 30),
    );
    expect(free).toBeGreaterThan(flush ?? NaN);
    expect(flush).toBeGreaterThan(bonded ?? NaN);
  });
  it("never turns negative, however hot", () => expect(output({ ...roof, gamma_per_K: -0.02 }, 1000, 70)).toBe(0));
  it("adds to what is there", () => {
    const out = one(7);
    arrayOutput_W(roof, one(1000), one(4.2), out);
    arrayOutput_W(roof, one(1000), one(4.2), out);
    expect(out[0]).toBeCloseTo(7 + 2 * 174.6, 9);
  });
});

describe("an array's current through a pulse-width charger", () => {
  it("is near that of a short, less dirt and wiring", () => {
    expect(current(roof, 12, 1000, 4.2)).toBeCloseTo((200 / 18) * 1.06 * 0.9 * 0.97, 9);
  });
  it("is half on a bank of 24 V, whose panel has twice the volts", () => {
    expect(current(roof, 24, 700, 20)).toBeCloseTo(current(roof, 12, 700, 20) / 2, 12);
  });
  it("does not fall with warmth as power does", () => {
    expect(current(roof, 12, 1000, 40)).toBeGreaterThan(current(roof, 12, 1000, 0));
  });
});

describe("what is refused", () => {
  it.each([
    [() => output({ ...roof, watts: NaN }, 1, 1), /watts must be 0 to 100000, got NaN/],
    [() => output({ ...roof, soiling: 1.2 }, 1, 1), /soiling must be 0 to 1, got 1.2/],
    [() => output({ ...roof, gamma_per_K: 0.1 }, 1, 1), /gamma_per_K must be -0.02 to 0, got 0.1/],
    [() => output({ ...roof, mount: "mast" as never }, 1, 1), /mount must be one of free, flush, bonded, got mast/],
    [() => current(roof, 36 as never, 1, 1), /nominal_V must be one of 12, 24, got 36/],
    [
      () => {
        arrayOutput_W(roof, one(1), new Float64Array(2), one(0));
      },
      /air_C must hold 1 values, got 2/,
    ],
  ])("%#", (ask, message) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  });
});
