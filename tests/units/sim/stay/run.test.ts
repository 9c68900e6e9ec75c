import { describe, expect, it } from "vitest";
import { bankModel } from "../../../../packages/sim/src/bank/index.ts";
import { newFound, newLedger, run, unusedCauses, type Drive } from "../../../../packages/sim/src/stay/index.ts";
import { lithium, twoAgm } from "../../../fixtures/stays.ts";
import { alone } from "../../../reference/stayAlone.ts";

/** Sun on the second day from 08:00 to 16:00, hour 0 being 15:00. */
function withSun(drive: Drive, watts: number): Drive {
  const sun = new Float64Array(drive.hours);
  for (let h = 0; h < drive.hours; h++) if ((h + 15) % 24 >= 8 && (h + 15) % 24 < 16) sun[h] = watts;
  return { ...drive, sun };
}

describe("a run", () => {
  it("of lithium lasts as long as its energy, and drops when empty", () => {
    const found = run(alone(bankModel({ ...lithium, capacity_Ah: 100 }, 25), 48, 65), newFound());
    expect(found.drop_h).toBeGreaterThan(19.5); // 100 Ah at some 13.1 V and 65 W
    expect(found.drop_h).toBeLessThan(20.5);
    expect(found.reserve_h).toBeCloseTo(0.9 * found.drop_h, 0);
    expect(found.lowest).toBeLessThan(0.001);
  });
  it("of AGM drops at its cut-off with charge still in it, and sooner under a heavy load", () => {
    const bank = bankModel(twoAgm, 25);
    const light = { ...run(alone(bank, 240, 40), newFound()) };
    const heavy = { ...run(alone(bank, 240, 800), newFound()) };
    expect(light.lowest).toBeLessThan(heavy.lowest);
    expect(800 * heavy.drop_h).toBeLessThan(40 * light.drop_h);
  });
  it("comes back when the sun has brought the volts up, and says when", () => {
    const found = run(withSun(alone(bankModel(twoAgm, 25), 96, 120), 250), newFound());
    expect(found.drop_h).toBeGreaterThan(0);
    expect(found.return_h).toBeGreaterThan(found.drop_h);
    expect((found.return_h + 15) % 24).toBeGreaterThan(8);
  });
  it("leaves the sun of the hour of a drop unused for that reason, and serves nothing until loads return", () => {
    const drive = withSun(alone(bankModel({ ...twoAgm, capacity_Ah: 60 }, 25), 48, 120), 40);
    const ledger = newLedger(48);
    const { drop_h, return_h } = run(drive, newFound(), { ledger });
    const hour = Math.floor(drop_h);
    expect(ledger.powered_h[hour]).toBeCloseTo(drop_h - hour, 9);
    for (let h = hour + 1; h < (return_h >= 0 ? return_h : 48); h++) expect(ledger.served_Wh[h]).toBe(0);
    const dark = ledger.sunAvailable_Wh[hour] === 0;
    expect(unusedCauses[ledger.unusedCause[hour]!]).toBe(dark ? "none" : "loads-dropped");
  });
  it("gives the charge held from the start on, one value a step more than hours", () => {
    const held_Ah = new Float64Array(25);
    const bank = bankModel(twoAgm, 25);
    run(alone(bank, 24, 60), newFound(), { held_Ah });
    expect(held_Ah[0]).toBe(bank.full_Ah);
    for (let h = 1; h <= 24; h++) expect(held_Ah[h]).toBeLessThan(held_Ah[h - 1]!);
  });
  it("loses a month's self-discharge and no more when nothing is drawn", () => {
    const found = run(alone(bankModel(twoAgm, 25), 730, 0), newFound());
    expect(1 - found.lowest).toBeCloseTo(0.04 * 1.084, 2); // of full, in units of the 20 h capacity
    expect(found.drop_h).toBeNaN();
  });
  it("refuses a start that is not a share, and series that are too short", () => {
    const drive = alone(bankModel(twoAgm, 25), 24, 60);
    expect(() => run({ ...drive, startCharge: 1.1 }, newFound())).toThrow(/startCharge must be 0 to 1, got 1.1/);
    expect(() => run({ ...drive, hours: 25 }, newFound())).toThrow(/loads must have 25 hours or more, got 24/);
  });
});
