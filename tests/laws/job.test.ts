import { packJob, parseJob, parseJobText, resolve, toJobText, unpackJob, type Fault, type Job } from "@stayput/job";
import { words } from "@stayput/job/quantities";
import { explain, roundTheYear, wiring } from "@stayput/sim";
import fc from "fast-check";
import { afterAll, describe, expect, it, vi } from "vitest";
import { anyJob, anyJobInput } from "./arbitraries/job.ts";

// Cases decide how long these take, not a clock.
vi.setConfig({ testTimeout: 300_000 });

// What was tried and what came through, printed at the end. FC_RUNS multiplies the cases; 10 000 mutants are the default.
const tally = { jobs: 0, texts: 0, links: 0, mutants: 0, refused: 0, accepted: 0, damaged: 0, undetected: 0 };
afterAll(() => console.log(`job files: ${JSON.stringify(tally)}`));

// Shrinking a whole job takes far longer than reading the one that failed.
const runs = (perHundred: number): { numRuns: number; endOnFailure: boolean } => ({
  endOnFailure: true,
  numRuns: Math.max(10, Math.round((Number(process.env["FC_RUNS"] ?? 100) * perHundred) / 100)),
});

/** Every number of a value, however deep. */
function numbers(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbers) : [];
}

describe("valid jobs", () => {
  it("parse again to themselves: what is filled in is itself a job", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        tally.jobs++;
        expect(parseJob(structuredClone(job))).toEqual({ ok: true, job, notes: [] });
      }),
      runs(150),
    );
  });

  it("come back from their text, with and without the defaults written out", () => {
    fc.assert(
      fc.property(anyJob, fc.boolean(), (job, full) => {
        tally.texts++;
        const text = toJobText(job, { full });
        expect(parseJobText(text)).toEqual({ ok: true, job, notes: [] });
        expect(toJobText(job, { full })).toBe(text);
      }),
      runs(150),
    );
  });

  it("come back from a link, whose letters need no escaping", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        tally.links++;
        const link = packJob(job);
        expect(link).toMatch(/^[A-Za-z0-9._-]+$/);
        expect(encodeURIComponent(link)).toBe(link);
        expect(unpackJob(`#${link}`)).toEqual({ ok: true, job, notes: [] });
      }),
      runs(150),
    );
  });

  it("resolve to a study without NaN or infinity, each setup with its own loads", async () => {
    await fc.assert(
      fc.asyncProperty(anyJob, fc.integer({ min: 1, max: 12 }), async (job, month) => {
        const resolved = await resolve(job, { month });
        if (!resolved.ok) throw new Error(resolved.faults[0]?.message);
        expect(numbers(resolved.study).every(Number.isFinite)).toBe(true);
        expect(resolved.study.trip.month).toBe(month);
        resolved.study.setups.forEach((setup, i) => expect(loadIds(setup)).toEqual(expectedIds(job, i)));
      }),
      runs(100),
    );
  });

  it("can be answered, whatever is asked: what parses is never refused by the simulation", async () => {
    await fc.assert(
      fc.asyncProperty(anyJob, async (job) => {
        const resolved = await resolve(job);
        if (!resolved.ok) throw new Error(resolved.faults[0]?.message);
        const { study } = resolved;
        const one = { seed: 1, draws: 1 };
        const answers = [explain(study, { skies: one }), roundTheYear(study, one), wiring(study.setups, () => 20)];
        for (const answer of answers) expect(numbers(answer).every(Number.isFinite)).toBe(true);
      }),
      runs(30),
    );
  });
});

const loadIds = ({ loads }: { loads: readonly { id: string }[] }): string[] => loads.map(({ id }) => id);
const expectedIds = (job: Job, setup: number): string[] => {
  const { drop, add } = job.setups[setup]!.loads;
  return [...loadIds(job).filter((id) => !drop.includes(id)), ...loadIds({ loads: add })];
};

// Mutations: what careless editing, cut-off transfers and malice make of a job file.
type Mutation = (text: string, at: number, pick: number) => string;
const poison = [
  "-1",
  "1e999",
  "-1e999",
  "null",
  "true",
  '""',
  '"NaN"',
  '"3 A"',
  "{}",
  "[]",
  "[[]]",
  '{"__proto__":{"x":1}}',
  "9".repeat(400),
];
const mutations: readonly Mutation[] = [
  (text, at) => text.slice(0, at), // cut off
  (text, at, pick) => text.slice(0, at) + text.slice(at + 1 + (pick % 20)), // a piece lost
  (text, at, pick) => text.slice(0, at) + String.fromCharCode(pick % 0x3000) + text.slice(at), // a letter too many
  (text, at, pick) => replaceValue(text, at, poison[pick % poison.length]!), // another value
  (text, at, pick) => renameKey(text, at, ["__proto__", "constructor", "prototype", "watt", "\\u0000"][pick % 5]!), // another name
  (text, at, pick) => swapLetters(text, at, pick), // two letters changed about
  (text, at) => text.slice(0, at) + text.slice(at >> 1), // a piece twice
];

function replaceValue(text: string, at: number, value: string): string {
  const values = [...text.matchAll(/: (-?[\d.]+|"[^"\\]*"|null|true|false)/g)];
  const hit = values[at % values.length];
  return hit === undefined ? text : `${text.slice(0, hit.index)}: ${value}${text.slice(hit.index + hit[0].length)}`;
}

function renameKey(text: string, at: number, name: string): string {
  const keys = [...text.matchAll(/"([A-Za-z_0-9]+)":/g)];
  const hit = keys[at % keys.length];
  return hit === undefined ? text : `${text.slice(0, hit.index)}"${name}":${text.slice(hit.index + hit[0].length)}`;
}

function swapLetters(text: string, at: number, pick: number): string {
  const other = (at + 1 + (pick % 50)) % text.length;
  const letters = text.split("");
  [letters[at], letters[other]] = [letters[other] ?? "", letters[at] ?? ""];
  return letters.join("");
}

function expectUseful(faults: readonly Fault[]): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const { message, given, accepted, path } of faults) {
    expect(message.length).toBeGreaterThan(8);
    expect(message.length).toBeLessThan(2000);
    expect(accepted).not.toBe("");
    expect(`${message}${given}${accepted}${path}`).not.toMatch(
      /undefined|\[object|[\u0000-\u001f\u202e]|Invalid input/,
    );
  }
}

describe("mutated jobs", () => {
  it("are refused in words or read as jobs whose study has no NaN; never a crash", async () => {
    await fc.assert(
      fc.asyncProperty(
        anyJobInput,
        fc.array(fc.tuple(fc.constantFrom(...mutations), fc.nat(100_000), fc.nat(100_000)), {
          minLength: 10,
          maxLength: 10,
        }),
        fc.boolean(),
        async (input, changes, spoken) => {
          const text = JSON.stringify(input, null, 1);
          for (const [mutate, at, pick] of changes) {
            tally.mutants++;
            const read = parseJobText(mutate(text, at % text.length, pick), spoken ? { words } : {});
            if (!read.ok) {
              tally.refused++;
              expectUseful(read.faults);
              continue;
            }
            tally.accepted++;
            const resolved = await resolve(read.job);
            if (resolved.ok) expect(numbers(resolved.study).every(Number.isFinite)).toBe(true);
            else expectUseful(resolved.faults);
          }
        },
      ),
      runs(1000),
    );
    expect(({} as Record<string, unknown>)["x"]).toBeUndefined();
  });

  it("as links are told to be damaged, whichever letter is changed, lost or added", () => {
    fc.assert(
      fc.property(
        anyJob,
        fc.array(fc.tuple(fc.nat(), fc.nat(63), fc.nat(2)), { minLength: 10, maxLength: 10 }),
        (job, hits) => {
          const link = packJob(job);
          for (const [where, letter, how] of hits) {
            const hurt = damage(link, where % link.length, letter, how);
            if (hurt === link) continue;
            tally.damaged++;
            const read = unpackJob(hurt);
            if (read.ok) tally.undetected++;
            else expectUseful(read.faults);
          }
        },
      ),
      runs(150),
    );
    expect(tally.undetected).toBe(0);
  });

  it("of any JSON value whatever are refused, all faults in words", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
        const read = parseJob(value);
        expect(read.ok).toBe(false);
        if (!read.ok) expectUseful(read.faults);
      }),
      runs(500),
    );
  });
});

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
function damage(link: string, at: number, letter: number, how: number): string {
  if (how === 0) return link.slice(0, at);
  return link.slice(0, at) + letters[letter]! + link.slice(how === 1 ? at + 1 : at);
}
