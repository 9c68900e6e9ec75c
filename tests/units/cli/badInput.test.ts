import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { job, jobWith } from "./job.ts";
import { stayput } from "./stayput.ts";

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), "stayput-"));
});
afterAll(() => rm(dir, { recursive: true }));

const capacity = ["setups", 0, "bank", "capacity_Ah"];
const text = JSON.stringify(job, null, 2);

const invalid: [what: string, given: string, says: RegExp][] = [
  ["truncated JSON", text.slice(0, text.length / 2), /not readable as JSON: line \d+.*cut off/],
  ["an empty file", "", /empty/],
  ["something that is not JSON", "hello", /not readable as JSON/],
  ["a number for a file", "42", /\w/],
  ["a list for a file", "[]", /\w/],
  ["null for a file", "null", /\w/],
  ["a wrong type", jobWith(["trip", "nights"], '"soon"'), /trip\.nights: "soon" was given; accepted is/],
  ["NaN", jobWith(capacity, "NaN"), /not readable as JSON: line \d+/],
  ["an infinity", jobWith(capacity, "1e999"), /setups\[0\]\.bank\.capacity_Ah/],
  ["a negative value", jobWith(capacity, "-5"), /setups\[0\]\.bank\.capacity_Ah: -5 was given; accepted is/],
  [
    "an absurd value",
    jobWith(capacity, "1e12"),
    /setups\[0\]\.bank\.capacity_Ah: 1000000000000 was given; accepted is/,
  ],
  ["an unknown field", jobWith(["trip", "nigths"], "4"), /trip\.nigths: unknown field "nigths"; did you mean nights\?/],
  ["two loads with one id", jobWith(["loads", 1, "id"], '"lights"'), /loads\[1\]\.id.*"lights"/],
  ["a place that is not there", jobWith(["place"], '{ "id": "za-upingtn" }'), /no place "za-upingtn".*za-upington/],
  [
    "a key that reaches for the prototype",
    jobWith(["__proto__x"], "1").replace("__proto__x", "__proto__"),
    /__proto__/,
  ],
  ["deep nesting", "[".repeat(100_000), /nest deeper/],
  ["another format", jobWith(["format"], '"other"'), /format: "other" was given; accepted is "stayput-job"/],
  ["a version of the future", jobWith(["version"], "99"), /version/],
];

describe("an invalid job", { timeout: 60_000 }, () => {
  it.each(invalid)("%s: exit 1, a clear message, no answer, no stack trace", async (_what, given, says) => {
    const { code, out, err } = await stayput(["explain", "-"], given);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toMatch(says);
    expect(err).not.toMatch(/\n\s+at |\.ts:\d|node:/);
    expect(err).not.toContain("fault of the program");
  });

  it("has all its faults told at once, each with its line", async () => {
    const bad = {
      ...job,
      place: { id: "za-upingtn" },
      match: [{ flatOnMorning: 0, place: { id: "na-windhoeck" } }],
      trip: { arrive: "13-40", nights: -1 },
      loads: [{ ...job.loads[0], watts: "many" }],
      colour: 1,
    };
    const { code, err } = await stayput(["check", "-"], JSON.stringify(bad, null, 2));
    expect(code).toBe(1);
    for (const path of ["trip.arrive", "trip.nights", "loads[0].watts", "colour"]) expect(err).toContain(path);
    expect(err).toMatch(/place\.id: there is no place "za-upingtn"; the nearest are za-upington /);
    expect(err).toMatch(/match\[0\]\.place\.id: there is no place "na-windhoeck"; the nearest are na-windhoek /);
    expect(
      err
        .trim()
        .split("\n")
        .every((line) => /^standard input:\d+: /.test(line)),
    ).toBe(true);
  });

  it("of 10 MB is refused at once", async () => {
    const path = join(dir, "large.json");
    await writeFile(path, `{"title": "${"x".repeat(10_000_000)}"}`);
    for (const outcome of [await stayput(["explain", path]), await stayput(["explain", "-"], "x".repeat(10_000_000))]) {
      expect(outcome).toMatchObject({ code: 1, out: "" });
      expect(outcome.err).toMatch(/bytes; accepted is at most/);
      expect(outcome.err.length).toBeLessThan(500);
    }
  });

  it("of bytes that are no text is told from one that is", async () => {
    const path = join(dir, "picture.json");
    await writeFile(path, Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0x00, 0xfe]));
    expect(await stayput(["explain", path])).toMatchObject({
      code: 1,
      err: expect.stringMatching(/something other than text/),
    });
  });

  it("saved with a mark of its byte order is read all the same", async () => {
    const path = join(dir, "marked.json");
    await writeFile(path, `\ufeff${text}`);
    expect((await stayput(["check", path])).code).toBe(0);
    await writeFile(path, Buffer.from(`\ufeff${text}`, "utf16le"));
    expect((await stayput(["check", path])).code).toBe(0);
  });

  it("is told where skies end before the morning to match", async () => {
    const skies = join(dir, "skies.csv");
    await writeFile(skies, "0.5,0.5,0.5,0.5,0.5\n");
    const asked = JSON.stringify({ ...job, match: [{ flatOnMorning: 2 }, { flatOnMorning: 9 }] });
    expect(await stayput(["match", "-", "--skies", skies], asked)).toMatchObject({
      code: 1,
      err: expect.stringMatching(/5 days were given; the trip needs 10, the day of arrival included/),
    });
  });

  it("leaves nothing written", async () => {
    const empty = await mkdtemp(join(dir, "empty-"));
    const path = join(empty, "bad.json");
    await writeFile(path, "{");
    await stayput(["explain", path]);
    expect(await readdir(empty)).toEqual(["bad.json"]);
  });

  it("cannot steer the terminal with its names", async () => {
    const named = jobWith(["title"], JSON.stringify("\u001b]0;owned\u0007 \u202egnp"));
    for (const { out, err } of [await stayput(["check", "-"], named), await stayput(["check", "-"], `${named}x`)]) {
      expect(`${out}${err}`.replaceAll("\n", "")).not.toMatch(/\p{Cc}|\u202e/u);
    }
  });
});
