import { jobJsonSchema, packJob, parseJob, type JobInput } from "@stayput/job";
import fc from "fast-check";
import { afterAll, describe, expect, it, vi } from "vitest";
import { fitsSheet } from "../../../../apps/web/src/share/fitsSheet.ts";
import { toText } from "../../../../apps/web/src/share/jobFile.ts";
import { readForSheet, readLinkForSheet } from "../../../../apps/web/src/share/readForSheet.ts";
import { emptyJob } from "../../../../apps/web/src/store/emptyJob.ts";
import { anyJob, anyJobInput } from "../../../laws/arbitraries/job.ts";

vi.setConfig({ testTimeout: 120_000 });

const tally = { files: 0, links: 0, damaged: 0, undetected: 0, blanksWrong: 0 };
afterAll(() => console.log(`what opens on the sheet: ${JSON.stringify(tally)}`));
const runs = { numRuns: 150, endOnFailure: true };

describe("a valid job", () => {
  it("opens from its file exactly as it was typed", async () => {
    await fc.assert(
      fc.asyncProperty(anyJobInput, async (job) => {
        tally.files++;
        expect(await readForSheet(toText(job))).toEqual({ ok: true, job, faults: [], older: false });
      }),
      runs,
    );
  });

  it("means the same when it has gone through a link", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        tally.links++;
        const opened = readLinkForSheet(packJob(job));
        if (!opened.ok) throw new Error(opened.faults[0]?.message);
        expect(parseJob(opened.job)).toEqual({ ok: true, job, notes: [] });
      }),
      runs,
    );
  });
});

describe("a damaged link", () => {
  it("is refused in words, wherever it is cut or changed", () => {
    const spot = fc.tuple(
      fc.nat(),
      fc.constantFrom("cut", "changed", "put in", "taken out"),
      fc.constantFrom("A", "Z", "a", "z", "0", "9", "-", "_"),
    );
    fc.assert(
      fc.property(anyJob, spot, (job, [at, how, letter]) => {
        const link = packJob(job);
        const i = 2 + (at % (link.length - 2));
        const damaged = {
          cut: link.slice(0, i),
          changed: link.slice(0, i) + letter + link.slice(i + 1),
          "put in": link.slice(0, i) + letter + link.slice(i),
          "taken out": link.slice(0, i) + link.slice(i + 1),
        }[how];
        // a letter changed for itself, or put in beside its like at the end, is no damage
        if (damaged === link) return;
        tally.damaged++;
        const opened = readLinkForSheet(damaged);
        if (opened.ok) tally.undetected++;
        expect(opened.ok).toBe(false);
        expect(!opened.ok && opened.faults[0]?.message).toMatch(/link/);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });
});

describe("a job that is not yet right", () => {
  const wrong = (change: (job: JobInput) => unknown): string => JSON.stringify(change(structuredClone(emptyJob)));

  it("opens with its faults where each has a blank, as typed", async () => {
    const bank = (value: unknown) =>
      wrong((job) => ({ ...job, setups: [{ ...job.setups[0]!, bank: { chemistry: "agm", capacity_Ah: value } }] }));
    for (const value of ["lots", "", -4, 1e12, "x".repeat(100_000)]) {
      const opened = await readForSheet(bank(value));
      expect(opened.ok, JSON.stringify(value).slice(0, 40)).toBe(true);
      if (opened.ok) expect(opened.job.setups[0]!.bank.capacity_Ah).toBe(value);
      if (opened.ok) expect(opened.faults.length).toBeGreaterThan(0);
      tally.blanksWrong++;
    }
    const cleared = await readForSheet(
      wrong((job) => ({ ...job, setups: [{ ...job.setups[0]!, bank: { chemistry: "agm" } }] })),
    );
    expect(cleared.ok).toBe(true);
  });

  it("is refused where a group, a list or a kind is not what it must be", async () => {
    const texts = [
      wrong((job) => ({ ...job, loads: 7 })),
      wrong((job) => ({ ...job, trip: null })),
      wrong((job) => ({ ...job, place: "Upington" })),
      wrong((job) => ({ ...job, setups: [[]] })),
      wrong((job) => ({ ...job, setups: [{ ...job.setups[0]!, bank: undefined }] })),
      wrong((job) => ({ ...job, loads: [{ id: "x", name: "x", kind: "kettle" }] })),
      wrong((job) => ({ ...job, setups: [null] })),
      wrong((job) => ({ ...job, place: { id: {} } })),
      wrong((job) => ({ ...job, title: 7 })),
      wrong((job) => ({ ...job, trip: { nights: 3 } })),
      wrong((job) => ({ ...job, trip: { ...job.trip, nights: true } })),
      wrong((job) => ({ ...job, unknown: 1 })),
      wrong((job) => ({ ...job, version: 2 })),
      '{"title":"a","title":"b"}',
      "",
      "null",
    ];
    for (const text of texts) {
      const opened = await readForSheet(text);
      expect(opened.ok, text.slice(0, 80)).toBe(false);
      expect(!opened.ok && opened.faults.length).toBeGreaterThan(0);
    }
  });

  it("is looked at no further than a job can reach", () => {
    const wide = { ...emptyJob, loads: Array.from({ length: 1001 }, () => ({})) };
    expect(fitsSheet(wide, jobJsonSchema())).toBe(false);
    let deep: unknown = {};
    for (let i = 0; i < 150; i++) deep = { a: deep };
    expect(fitsSheet({ ...emptyJob, place: deep }, jobJsonSchema())).toBe(false);
    expect(fitsSheet(emptyJob, jobJsonSchema())).toBe(true);
  });
});
