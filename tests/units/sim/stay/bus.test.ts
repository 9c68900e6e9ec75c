import { describe, expect, it } from "vitest";
import { newBus, settle, type Bus } from "../../../../packages/sim/src/stay/index.ts";

/** Half a bank at rest, nothing on it. */
const idle: Bus = {
  ...newBus(),
  rested_V: 12.2,
  resistance_Ohm: 0.005,
  gap_V: 0.75,
  absorption_V: 14.4,
  accepts_A: 60,
  load_W: 0,
  element_S: 0,
  sun_W: 0,
  sun_A: 0,
  sunMost_A: 40,
  held_W: 0,
  extra_A: 0,
};

function settled(change: Partial<Bus>): Bus {
  const bus = { ...idle, ...change };
  settle(bus);
  return bus;
}

describe("the bus", () => {
  it("rests at the rested volts", () => {
    const { volts_V, bank_A, served_W } = settled({});
    expect([volts_V, bank_A, served_W]).toEqual([12.2, 0, 0]);
  });
  it("sags under a load, which takes its watts all the same", () => {
    const { volts_V, bank_A } = settled({ load_W: 600 });
    expect(volts_V * -bank_A).toBeCloseTo(600, 9);
    expect(volts_V).toBeCloseTo(12.2 + 0.005 * bank_A, 12);
  });
  it("rises on charge, by the gap and the resistance", () => {
    const { volts_V, bank_A } = settled({ sun_W: 300 });
    expect(volts_V).toBeCloseTo(12.95 + 0.005 * bank_A, 12);
    expect(volts_V * bank_A).toBeCloseTo(300, 9);
  });
  it("stands at the absorption volts where the bank takes no more, and leaves the rest of the sun", () => {
    const { volts_V, bank_A, sunUsed_W, sunAvailable_W } = settled({ sun_W: 300, accepts_A: 5 });
    expect([volts_V, bank_A]).toEqual([14.4, 5]);
    expect(sunUsed_W).toBeCloseTo(72, 9);
    expect(sunAvailable_W).toBeCloseTo(300, 9);
  });
  it("holds a tracking charger to its rating", () => {
    const { bank_A, sunAvailable_W, volts_V } = settled({ sun_W: 900 });
    expect(bank_A).toBeCloseTo(40, 9);
    expect(sunAvailable_W).toBeCloseTo(40 * volts_V, 9);
  });
  it("takes a plain charger's sun as amps, worth the volts that they meet", () => {
    const { bank_A, sunAvailable_W, volts_V } = settled({ sun_A: 10 });
    expect(bank_A).toBeCloseTo(10, 12);
    expect(sunAvailable_W).toBeCloseTo(10 * volts_V, 9);
  });
  it("lets sun go before feed and mains where there is too much", () => {
    const { sunUsed_W, extraUsed_W } = settled({ load_W: 100, sun_W: 80, extra_A: 20, accepts_A: 0 });
    expect(sunUsed_W).toBeCloseTo(80, 9);
    expect(extraUsed_W).toBeCloseTo(20, 9);
  });
  it("gives a heating element what the volts make it take", () => {
    const { served_W, volts_V } = settled({ element_S: 170 / 144 });
    expect(served_W).toBeCloseTo((170 * volts_V ** 2) / 144, 9);
    expect(served_W).toBeGreaterThan(170);
  });
  it("gives at most what its resistance lets through, and is then finite all the same", () => {
    const { volts_V, bank_A } = settled({ load_W: 1e5 });
    expect(volts_V).toBeCloseTo(6.1, 9);
    expect(Number.isFinite(bank_A)).toBe(true);
  });
});
