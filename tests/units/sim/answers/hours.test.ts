import { describe, expect, it } from "vitest";
import { explain } from "../../../../packages/sim/src/answers/explain.ts";
import { ledgerOf } from "../../../../packages/sim/src/answers/hours.ts";
import { unusedCauses } from "../../../../packages/sim/src/stay/ledger.ts";
import type { Feed, Setup, Trip } from "../../../../packages/sim/src/study.ts";
import { sum, threeWay } from "../../../fixtures/loads.ts";
import { busySetup, openCamp, setup, study, twoAgm } from "../../../fixtures/stays.ts";

const feed: Feed = {
  kind: "relay",
  source: { volts: 14.2, low_V: null, lowShare: 0, spare_A: 50 },
  path: [{ kind: "cable", length_m: 7, area_mm2: 16, conductorClass: 5, temp_C: 40 }],
};
const roaming: Trip = {
  ...openCamp,
  drives: { everyNights: 2, hours: 3.5, departs: 9.25 },
  mains: { everyNights: 3, hours: 10, from: 18.5 },
};
const everything: Setup = {
  ...busySetup,
  feed,
  mainsCharger: { rated_A: 20 },
  loads: [...busySetup.loads, threeWay, { ...threeWay, id: "on-dc", burns: "dc" }],
};

describe("the hourly ledger of one setup", () => {
  it("has every load's energy, which with the inverter's idle draw is all that was served", () => {
    const { byLoad, inverterIdle_Wh, ledger, hours } = ledgerOf(study([everything], roaming), "now");
    expect(hours).toBe(openCamp.nights * 24);
    for (let i = 0; i < hours; i++) {
      const told = byLoad.reduce((total, { Wh }) => total + Wh[i]!, inverterIdle_Wh[i]!);
      expect(told, `hour ${i}`).toBeCloseTo(ledger.served_Wh[i]!, 6);
    }
    expect(sum(ledger.feed_Wh)).toBeGreaterThan(0);
    expect(sum(ledger.mains_Wh)).toBeGreaterThan(0);
    expect(ledger.powered_h.some((powered) => powered < 1)).toBe(true); // the element on dc runs it flat
  });

  it("balances at the bus hour by hour", () => {
    const { ledger, hours } = ledgerOf(study([everything], roaming), "now");
    for (let i = 0; i < hours; i++) {
      const given = ledger.sunUsed_Wh[i]! + ledger.feed_Wh[i]! + ledger.mains_Wh[i]! + ledger.bankOut_Wh[i]!;
      expect(given).toBeCloseTo(ledger.served_Wh[i]! + ledger.bankIn_Wh[i]!, 6);
    }
  });

  it("parked on the average sky adds up to what explain says of sun and use", () => {
    const asked = study([setup(twoAgm, 600)]);
    const [answer] = explain(asked, { skies: { seed: 1, draws: 1 } }).setups;
    const { ledger, byLoad } = ledgerOf(asked, "now", { travelled: false });
    expect(sum(ledger.sunUsed_Wh) / openCamp.nights).toBeCloseTo(answer!.sun_Wh_day.used, 6);
    for (const { id, Wh_day } of answer!.use_Wh_day.byLoad) {
      expect(sum(byLoad.find((load) => load.id === id)!.Wh) / openCamp.nights).toBeCloseTo(Wh_day, 6);
    }
  });

  it("stands at the absorption volts where the bank and not the source limits", () => {
    const { ledger, hours } = ledgerOf(study([setup(twoAgm, 600)]), "now", { travelled: false });
    const full = Array.from({ length: hours }, (_, i) => i).filter(
      (i) => unusedCauses[ledger.unusedCause[i]!] === "bank-full",
    );
    expect(full.length).toBeGreaterThan(10);
    for (const i of full) expect(ledger.volts_V[i]).toBeCloseTo(14.4, 9);
  });

  it("takes the sky that it is given", () => {
    const asked = study([setup(twoAgm, 300)]);
    const light = (sky: "dark" | "average" | readonly number[]) =>
      sum(ledgerOf(asked, "now", { sky }).ledger.sunAvailable_Wh);
    expect(light("dark")).toBe(0);
    expect(light([0.2, 0.2, 0.2, 0.2, 0.2, 0.2])).toBeLessThan(light("average"));
    expect(light([0.7, 0.7, 0.7, 0.7, 0.7, 0.7])).toBeGreaterThan(light("average"));
  });

  it("names the setups where it is asked for one that is not there", () => {
    expect(() => ledgerOf(study([busySetup]), "lost")).toThrow("setup must be one of now, got lost");
  });
});
