import { describe, expect, it } from "vitest";
import { bankModel, chemistries } from "../../../../packages/sim/src/bank/index.ts";
import { newFound, run } from "../../../../packages/sim/src/stay/index.ts";
import type { Bank, ChemistryId } from "../../../../packages/sim/src/study.ts";
import { twoAgm } from "../../../fixtures/stays.ts";
import { alone } from "../../../reference/stayAlone.ts";

const of = (chemistry: ChemistryId) => bankModel({ ...twoAgm, chemistry }, 25);

// Typical, from memory: 0.97 to 0.70, 0.93 at 0.80, 0.75 at 0.90, 0.50 at 1. The shape, nearly all of it low down and far less
// near full, is Stevens & Corey 1996 (Sandia).
it.each([
  [0, 0.97],
  [0.7, 0.97],
  [0.8, 0.93],
  [0.9, 0.75],
  [1, 0.5],
])("a flooded bank at a charge of %d stores %d of the amps that it is given", (charge, efficiency) => {
  expect(of("flooded").efficiency.at(charge)).toBeCloseTo(efficiency, 12);
});

const lead = ["agm", "gel", "flooded"] as const;

describe.each(lead)("%s", (chemistry) => {
  // Chosen: the terminals of a lead-acid bank stand 0.75 V above rest as soon as it is charged at all.
  it("is charged 0.75 V above its rested volts, twice that at 24 V", () => {
    expect(of(chemistry).gap_V).toBe(0.75);
    expect(bankModel({ ...twoAgm, chemistry, nominal_V: 24 }, 25).gap_V).toBe(1.5);
  });
  // Common practice, no source.
  it("has its loads back at 12.6 V, twice that at 24 V", () => {
    expect(of(chemistry).returns_V).toBe(12.6);
    expect(bankModel({ ...twoAgm, chemistry, nominal_V: 24 }, 25).returns_V).toBe(25.2);
  });
});

// Chosen (the gap); common practice, no source (the return).
it("lithium is charged 0.05 V above its rested volts and has its loads back at 13 V", () => {
  expect([chemistries.lfp.gap_V, chemistries.lfp.returns_V]).toEqual([0.05, 13]);
});

describe("through a run, of a bank whose rested volts are the same at any charge", () => {
  /** Whether loads that dropped in the first hour are back in the second, on a trickle of sun or none. */
  function comesBack(chemistry: ChemistryId, rested_V: number, sun_W: number): boolean {
    const restedVolts = [0, 1].map((share) => ({ share, volts: rested_V }));
    const bank: Bank = { ...twoAgm, chemistry, restedVolts, cutOff_V: rested_V };
    const drive = alone(bankModel(bank, 25), 2, 50);
    drive.sun[1] = sun_W;
    const { drop_h, return_h } = run(drive, newFound());
    expect(drop_h).toBeLessThan(1);
    return return_h === 2;
  }

  it.each(lead)("%s at rest has its loads back from 12.6 V on", (chemistry) => {
    expect(comesBack(chemistry, 12.59, 0)).toBe(false);
    expect(comesBack(chemistry, 12.61, 0)).toBe(true);
  });
  // a watt into a bank of 2.5 or 3 mΩ raises the volts by a quarter of a millivolt more
  it.each(lead)("%s on charge has them back from 12.6 - 0.75 V on", (chemistry) => {
    expect(comesBack(chemistry, 11.84, 1)).toBe(false);
    expect(comesBack(chemistry, 11.86, 1)).toBe(true);
  });
});
