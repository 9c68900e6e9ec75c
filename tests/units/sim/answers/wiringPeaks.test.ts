import { describe, expect, it } from "vitest";
import { peakBank, peaks, type PeakBank } from "../../../../packages/sim/src/answers/wiringPeaks.ts";
import { bankModel } from "../../../../packages/sim/src/bank/index.ts";
import type { Load } from "../../../../packages/sim/src/study.ts";
import { bank, fridge, inverter, kettle } from "./wiringSetups.ts";

const model = (change = {}) => peakBank(bankModel(bank(change), 25));
const peakAt = (load: Load, of: PeakBank, charge: number) => peaks([load], inverter, of, charge)[0]!;

describe("a kettle on an inverter", () => {
  it("draws its watts and the losses through the bank's resistance", () => {
    const flat: PeakBank = {
      rested_V: () => 12.4,
      resistance_Ohm: () => 0.005,
      cutOff_V: 11.5,
      most_A: Infinity,
      nominal_V: 12,
    };
    const peak = peakAt(kettle, flat, 0.6);
    expect(peak.draw_W).toBeCloseTo(1500 + 14 + 75 + (0.05 * 1500 ** 2) / 2000, 9);
    expect(peak.draw_A * peak.volts_V).toBeCloseTo(peak.draw_W, 6);
    expect(peak.volts_V).toBeCloseTo(12.4 - 0.005 * peak.draw_A, 9);
  });

  it("trips these AGMs below a charge, and the words name it", () => {
    const of = model();
    const { tripsBelow, sentence } = peakAt(kettle, of, 0.8);
    expect(tripsBelow).toBeGreaterThan(0.3);
    expect(tripsBelow).toBeLessThan(0.6);
    expect(peakAt(kettle, of, tripsBelow! + 0.01).verdict).toBe("ok");
    expect(peakAt(kettle, of, tripsBelow! - 0.01).verdict).toBe("below-cut-off");
    expect(sentence).toContain(`it trips the inverter below ${Math.round(tripsBelow! * 100)} %`);
  });

  it("trips a smaller bank sooner", () => {
    const [small, large] = [100, 300].map((capacity_Ah) => peakAt(kettle, model({ capacity_Ah }), 0.8).tripsBelow!);
    expect(small).toBeGreaterThan(large!);
  });

  it("is never NaN where the bank cannot carry it at all", () => {
    const peak = peakAt(kettle, model({ capacity_Ah: 10 }), 0.2);
    expect(peak.verdict).toBe("below-cut-off");
    expect(peak.tripsBelow).toBe(1);
    expect(peak.volts_V).toBeGreaterThan(0);
  });
});

it.each([
  ["no-inverter", kettle, null, {}],
  ["inverter-overloaded", { ...kettle, watts: 2200 }, inverter, {}],
  ["inverter-overloaded", { ...kettle, watts: 900, surge_W: 5000 }, inverter, {}],
  ["bms-limit", kettle, inverter, { chemistry: "lfp" as const, capacity_Ah: 100 }],
  ["ok", kettle, inverter, { chemistry: "lfp" as const, capacity_Ah: 200 }],
] as const)("finds %s", (verdict, load, through, change) => {
  expect(peaks([load], through, model(change), 0.7)[0]!.verdict).toBe(verdict);
});

it("starts a compressor on the inverter at its held-rotor watts", () => {
  const cooler: Load = { ...fridge, supply: "ac", compressor_W: 800 };
  const [peak] = peaks([cooler], inverter, model(), 0.7);
  expect(peak!.start_W).toBeCloseTo(800 * 5.35, -1);
  expect(peak!.overSurge).toBe(true);
  expect(peak!.verdict).toBe("inverter-overloaded");
});

it("leaves out small loads and those that only run on the road", () => {
  const driving: Load = { ...kettle, supply: "dc", watts: 500, only: "driving" };
  expect(peaks([fridge, driving], inverter, model(), 0.5)).toEqual([]);
});

it("refuses a charge that is not a share", () => {
  expect(() => peaks([], null, model(), Number.NaN)).toThrow("charge must be 0 to 1, got NaN");
});
