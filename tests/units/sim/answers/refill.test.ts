import { describe, expect, it } from "vitest";
import { refillHours } from "../../../../packages/sim/src/answers/refill.ts";
import { refillWith } from "../../../../packages/sim/src/answers/refillWith.ts";
import { planSetup, planStay } from "../../../../packages/sim/src/stay/index.ts";
import type { Bank, Feed, Source } from "../../../../packages/sim/src/study.ts";
import { dryTropics, lithium, openCamp, setup, study, twoAgm } from "../../../fixtures/stays.ts";

const source: Source = { volts: 14.2, low_V: null, lowShare: 0.8, spare_A: 90 };
const path: Feed["path"] = [{ kind: "cable", length_m: 7, area_mm2: 25, conductorClass: 5, temp_C: 40 }];
const relay: Feed = { kind: "relay", source, path };
const converter = (rated_A: number): Feed => ({
  kind: "converter",
  rated_A,
  count: 1,
  efficiency: 0.93,
  minInput_V: 10,
  source,
  path,
});
/** No loads, so that the bank has the charge to itself. */
const fed = (bank: Bank, feed: Feed | null) => ({ ...setup(bank, 300, []), feed });
const hours = (bank: Bank, feed: Feed | null) =>
  refillHours(planSetup(planStay(dryTropics, openCamp, 60), fed(bank, feed)));
const ask = (bank: Bank, feed: Feed | null, trip = openCamp) => refillWith(study([], trip), fed(bank, feed));

describe("refill", () => {
  it("is null where nothing feeds the bank", () => {
    expect(hours(twoAgm, null)).toEqual({ to80: null, toFull: null });
    expect(ask(twoAgm, null)).toEqual({
      now: null,
      drives: [],
      bigger: null,
      said: ["Nothing charges the bank on the road."],
    });
  });

  it("takes what the amp-hours take: lithium at a converter's full output", () => {
    // 200 Ah from 10 % to 80 % is 140 Ah; 25 A gives 25 Ah an hour, less half a per cent that is lost.
    expect(hours(lithium, converter(25)).to80!).toBeCloseTo(140 / (25 * 0.995), 0);
  });

  it("never takes longer with a larger converter; a relay fills an AGM more slowly than a converter", () => {
    for (const bank of [twoAgm, lithium]) {
      const toFull = [10, 20, 40, 60].map((rated_A) => hours(bank, converter(rated_A)).toFull ?? Infinity);
      expect(toFull).toEqual([...toFull].sort((a, b) => b - a));
    }
    expect(hours(twoAgm, relay).toFull!).toBeGreaterThan(hours(twoAgm, converter(40)).toFull! + 1);
  });

  // Common practice, no source: an AGM takes charge slower than lithium, and a bigger charger saves it minutes.
  it("saves an AGM minutes with twice the converter, and lithium hours", () => {
    const [agm, lfp] = [ask(twoAgm, converter(40)), ask(lithium, converter(40))];
    const saved_h = (answer: typeof agm) => answer.now!.toFull! - answer.bigger!.toFull!;
    expect(saved_h(agm)).toBeGreaterThan(0);
    expect(saved_h(agm)).toBeLessThan(0.75);
    expect(saved_h(lfp)).toBeGreaterThan(1.5);
    expect(agm.said[2]).toMatch(
      /^With 80 A for 40 A, on the same wire, that drive ends at \d+ %, and full comes \d+ minutes sooner only: near full, a lead-acid bank takes charge at its own pace\.$/,
    );
    expect(lfp.said[2]).toMatch(
      /^With 80 A for 40 A, on the same wire, that drive ends at \d+ %, and full comes [\d.]+ hours sooner\.$/,
    );
  });

  it("tells what an hour more of driving adds, for the drive of the trip", () => {
    const trip = { ...openCamp, drives: { everyNights: 2, hours: 3, departs: 9 } };
    const { drives, said } = ask(twoAgm, converter(20), trip);
    expect(drives.map(({ hours }) => hours)).toEqual([3, 4]);
    expect(drives[1]!.charge).toBeGreaterThan(drives[0]!.charge);
    expect(said[1]).toMatch(/^A drive of 3 hours ends at \d\d %; one an hour longer at \d\d %\.$/);
  });

  it("says that a low alternator behind a relay does next to nothing, and that a converter would", () => {
    const answer = ask(twoAgm, { ...relay, source: { ...source, low_V: 12.4, lowShare: 1 } });
    expect(answer.now).toEqual({ to80: null, toFull: null });
    expect(answer.said[0]).toBe(
      "From the reserve (50 %), without sun, two days of driving do not bring the bank to 80 %.",
    );
    expect(answer.said[2]).toMatch(/^With a 40 A converter for the relay, on the same wire, that drive ends at \d+ %/);
  });

  it("says so where the wire and not the converter is what holds it", () => {
    const thin: Feed = { ...converter(60), path: [{ kind: "plug", limit_A: 15, resistance_mOhm: 5 }] };
    expect(ask(twoAgm, thin).said[2]).toBe(
      "With 120 A for 60 A, on the same wire, that drive ends the same: the converter is not what holds the charge back.",
    );
  });
});
