import { migrate, type Migration } from "@stayput/job";
import { describe, expect, it } from "vitest";

// Invented: no version 0 was ever written. In it the bank's capacity stood in watt-hours at 12 V, and the arrival was a month
// and a day apart. What a real migration would do, and no more.
const versionNought = {
  format: "stayput-job",
  version: 0,
  trip: { month: 7, day: 10, nights: 6 },
  setups: [{ id: "now", bank: { chemistry: "agm", capacity_Wh: 2400 } }],
};

interface Nought {
  trip: { month: number; day: number; nights: number };
  setups: { id: string; bank: { chemistry: string; capacity_Wh: number } }[];
}
const two = (n: number): string => String(n).padStart(2, "0");
const fromNought: Migration = (job) => {
  const { trip, setups } = job as unknown as Nought;
  return {
    ...job,
    trip: { arrive: `${two(trip.month)}-${two(trip.day)}`, nights: trip.nights },
    setups: setups.map(({ id, bank }) => ({
      id,
      bank: { chemistry: bank.chemistry, capacity_Ah: bank.capacity_Wh / 12 },
    })),
  };
};

describe("migrate", () => {
  it("brings an older job up to date", () => {
    expect(migrate(versionNought, { 0: fromNought })).toEqual({
      ok: true,
      value: {
        format: "stayput-job",
        version: 1,
        trip: { arrive: "07-10", nights: 6 },
        setups: [{ id: "now", bank: { chemistry: "agm", capacity_Ah: 200 } }],
      },
    });
  });
  it("goes step by step", () => {
    const steps = { 0: fromNought, 1: ((job) => ({ ...job, title: "t" })) as Migration };
    expect(migrate(versionNought, steps, 2)).toMatchObject({ ok: true, value: { version: 2, title: "t" } });
  });
  it("leaves a job of this version as it is", () => {
    const job = { version: 1 };
    expect(migrate(job)).toEqual({ ok: true, value: job });
    expect(migrate(job)).toHaveProperty("value", job);
  });
  it("refuses what is newer, and what it knows no way from", () => {
    expect(migrate({ version: 7 })).toMatchObject({
      ok: false,
      fault: { says: expect.stringMatching(/version 7.*newer/) },
    });
    expect(migrate({ version: -1 })).toMatchObject({ ok: false, fault: { says: expect.stringMatching(/no way/) } });
  });
  it("passes on what has no version, for the schema to tell", () => {
    for (const value of [null, 3, {}, { version: "1" }, { version: 1.5 }])
      expect(migrate(value)).toEqual({ ok: true, value });
  });
});
