import fc from "fast-check";
import { expect, it } from "vitest";
import { acceptanceAt_A, bankModel } from "../../packages/sim/src/bank/index.ts";
import { availableAfter_Ah } from "../../packages/sim/src/bank/twoTanks.ts";
import { prepareFeed } from "../../packages/sim/src/feed/index.ts";
import { meet, newBus, type Bus } from "../../packages/sim/src/stay/bus.ts";
import { hourlyLoads, type Drive } from "../../packages/sim/src/stay/index.ts";
import { settleStep } from "../../packages/sim/src/stay/settleStep.ts";
import { newStep } from "../../packages/sim/src/stay/step.ts";
import { anyBank, anyRelay, int, scaled } from "./arbitraries/study.ts";

/** One hour of driving with a relay: its source at one voltage, loads, a heating element, sun through either charger. */
const anyHour = fc.record({
  bank: anyBank,
  temp_C: int(-5, 35),
  held: scaled(0.2, 1, 100),
  unlevel: scaled(0.9, 1.05, 100),
  feed: anyRelay,
  load_W: fc.oneof(fc.constant(0), int(1, 400)),
  element_W: fc.oneof(fc.constant(0), int(50, 250)),
  sun: fc.oneof(fc.constant(0), int(1, 600)),
  sunTracks: fc.boolean(),
});

function settled({ bank: of, temp_C, held, unlevel, feed: fed, load_W, element_W, sun, sunTracks }: DrivenHour) {
  const bank = bankModel({ ...of, nominal_V: 12 }, temp_C);
  const feed = prepareFeed({ ...fed, source: { ...fed.source, low_V: null } });
  const [none, all] = [new Float64Array(1), Float64Array.of(1)];
  const drivingLoads = hourlyLoads(1);
  drivingLoads.both.set([load_W, element_W]);
  const drive: Drive = {
    bank,
    hours: 1,
    startCharge: held,
    loads: hourlyLoads(1),
    sun: Float64Array.of(sunTracks ? sun : sun / 14),
    sunTracks,
    sunMost_A: 20,
    kept: all,
    mixed: {
      parked: none,
      driving: all,
      mains: none,
      drivingLoads,
      mainsLoads: hourlyLoads(1),
      feed,
      steadyFeed_A: NaN,
      mainsMost_A: 0,
    },
  };
  const q_Ah = held * bank.full_Ah;
  const q1_Ah = Math.min(bank.available_Ah, unlevel * q_Ah * bank.c);
  const bus: Bus = { ...newBus(), q_Ah, q1_Ah, gap_V: bank.gap_V, absorption_V: bank.absorption_V };
  settleStep(drive, 0, true, bus, newStep());
  return { bank, feed, bus, source_V: feed.shares[0]!.source_V };
}

type DrivenHour = typeof anyHour extends fc.Arbitrary<infer T> ? T : never;

/** What is over of each of a relay's limits: volts at the end of the step, and amps that the bank accepts. */
function over({ bank, feed, source_V }: ReturnType<typeof settled>, { q1_Ah, q_Ah, ...bus }: Bus) {
  const given_V = source_V - bus.extra_A * feed.resistance_Ohm;
  const into_A = bus.bank_A;
  const stored_A = into_A > 0 ? into_A * bus.efficiency : into_A;
  const rested_V = bank.volts.at(availableAfter_Ah(bank.tank, q1_Ah, q_Ah, -stored_A));
  return {
    volts: given_V - rested_V - (into_A > 0 ? bank.gap_V : 0) - into_A * bus.resistance_Ohm,
    accepted_A: acceptanceAt_A(bank, q_Ah, given_V, bus.charge) - into_A,
  };
}

const near = 1e-8;

it("a relay passes nothing that its limits do not allow, and its amps go where they are taken", () => {
  fc.assert(
    fc.property(anyHour, (hour) => {
      const one = settled(hour);
      const { bus, feed } = one;
      expect(bus.extra_A).toBeGreaterThanOrEqual(0);
      expect(bus.extra_A).toBeLessThanOrEqual(feed.spare_A + near);
      if (bus.extra_A === 0) return;
      const left = over(one, bus);
      expect(left.volts).toBeGreaterThanOrEqual(-near);
      if (bus.bank_A > 0) expect(left.accepted_A).toBeGreaterThanOrEqual(-near);
      const sun_A = bus.sun_A + Math.min(bus.sunMost_A, bus.sun_W / bus.volts_V);
      const taken_A = bus.load_W / bus.volts_V + bus.element_S * bus.volts_V + bus.bank_A;
      expect(bus.extra_A + sun_A).toBeCloseTo(taken_A, 8);
    }),
    { numRuns: 2000 },
  );
});

it("no other amps through a relay put more into the bank, or take less out", () => {
  fc.assert(
    fc.property(anyHour, (hour) => {
      const one = settled(hour);
      const { bus, feed } = one;
      for (let i = 0; i <= 60; i++) {
        const extra_A = (feed.spare_A * i) / 60;
        const tried = { ...bus, extra_A, accepts_A: Infinity };
        meet(tried);
        const left = over(one, tried);
        if (left.volts < near || left.accepted_A < near) continue;
        if (tried.bank_A > bus.bank_A + near) expect.fail(`${extra_A} A: ${tried.bank_A} over ${bus.bank_A} A`);
      }
    }),
    { numRuns: 2000 },
  );
});
