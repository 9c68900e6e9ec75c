import { describe, expect, it } from "vitest";
import { applianceInverterLoss_W, applianceWatts } from "../../../../packages/sim/src/loads/index.ts";
import { inverter, lamp } from "../../../fixtures/loads.ts";

const share = Float64Array.of(0, 0.25, 1);

describe("an appliance's watts", () => {
  const load = { ...lamp, watts: 60, count: 2, standby_W: 4 };
  it("are running watts for its share, standby for the rest, for all of them", () => {
    const { mean_W, running_W, standby_W } = applianceWatts(load, share);
    expect([...mean_W]).toEqual([8, 0.25 * 120 + 0.75 * 8, 120]);
    expect([running_W, standby_W]).toEqual([120, 8]);
  });
  it("refuse a share beyond 1 and a negative count", () => {
    expect(() => applianceWatts(load, Float64Array.of(1.2))).toThrow("lamp: share[0] must be 0 to 1, got 1.2");
    expect(() => applianceWatts({ ...load, count: -1 }, share)).toThrow("lamp: count must be more than 0, got -1");
    expect(() => applianceWatts({ ...load, watts: NaN }, share)).toThrow("lamp: watts must be");
  });
});

describe("losses through an inverter", () => {
  const kettle = { ...lamp, supply: "ac" as const, watts: 1500 };
  it("are on running watts, not on the hour's mean", () => {
    const [, quarter] = applianceInverterLoss_W(kettle, share, inverter);
    const atFull_W = 0.05 * 1500 + (0.05 * 1500 ** 2) / 2000;
    expect(quarter).toBeCloseTo(0.25 * atFull_W, 9);
    expect(quarter).toBeGreaterThan(0.05 * 375 + (0.05 * 375 ** 2) / 2000);
  });
  it("count standby too", () => {
    const [idle] = applianceInverterLoss_W({ ...kettle, standby_W: 10 }, share, inverter);
    expect(idle).toBeCloseTo(0.05 * 10 + (0.05 * 100) / 2000, 9);
  });
});
