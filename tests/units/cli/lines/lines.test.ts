import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MOST_LINE_BYTES } from "../../../../apps/cli/src/lines/splitLines.ts";
import { job } from "../job.ts";
import { stayput } from "../stayput.ts";

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), "stayput-"));
});
afterAll(() => rm(dir, { recursive: true }));

const titled = (title: string): string => JSON.stringify({ ...job, title, match: [{ flatOnMorning: 2 }] });
const few = ["--draws", "5"];

interface Printed {
  readonly title?: string;
  readonly line?: number;
  readonly faults?: readonly { readonly path?: string; readonly message: string }[];
}
const printed = (out: string): Printed[] =>
  out
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Printed);

describe("--lines", { timeout: 60_000 }, () => {
  const verbs = ["explain", "compare", "size", "year", "upgrades", "wiring", "match", "hours", "check"];
  it.each(verbs)("%s gives for each line what it gives for that job alone, in the order of the lines", async (verb) => {
    const draws = ["wiring", "hours", "check"].includes(verb) ? [] : few;
    const [first, second] = [titled("first"), titled("second")];
    const { code, out, err } = await stayput([verb, "-", "--lines", ...draws], `${first}\n${second}\n`);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const alone = await Promise.all(
      [first, second].map(async (one) => (await stayput([verb, "-", "--json", ...draws], one)).out),
    );
    expect(
      out
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line) as unknown),
    ).toEqual(alone.map((text) => JSON.parse(text) as unknown));
  });

  it("puts faults in the place of a line that holds no valid job, goes on, and ends with 1", async () => {
    const wrong = titled("wrong").replace('"nights":4', '"nights":"soon"');
    const input = [titled("a"), wrong, "", "  \r", "{", titled("b")].join("\n");
    const { code, out, err } = await stayput(["explain", "-", "--lines", ...few], input);
    const [a, second, third, b, ...more] = printed(out);
    expect([a?.title, b?.title, more]).toEqual(["a", "b", []]);
    expect(second).toMatchObject({ line: 2, faults: [{ path: "trip.nights" }] });
    expect(third?.line).toBe(5);
    expect(third?.faults?.[0]?.message).toMatch(/^not readable as JSON: column 2/);
    expect(code).toBe(1);
    expect(err).toBe("4 lines done, 2 of them invalid; their faults stand in their places\n");
  });

  it("tells faults that only the answer finds: no such setup, nothing to match", async () => {
    const one = await stayput(["explain", "-", "--lines", "--setup", "lost", ...few], titled("a"));
    expect(printed(one.out)[0]?.faults?.[0]?.message).toMatch(/no setup "lost"; accepted: now, more/);
    const none = await stayput(["match", "-", "--lines", ...few], JSON.stringify(job));
    expect(printed(none.out)[0]).toMatchObject({ line: 1, faults: [{ message: /nothing was given/ }] });
    expect([one.code, none.code]).toEqual([1, 1]);
  });

  it("refuses a line over 5 MB and one that is no text, and answers the next", async () => {
    const input = Buffer.concat([
      Buffer.alloc(MOST_LINE_BYTES + 1, " "),
      Buffer.from([10, 0xc3, 0x28, 10]),
      Buffer.from(titled("last")),
    ]);
    const { code, out } = await stayput(["check", "-", "--lines"], input);
    const [long, bytes, last] = printed(out);
    expect(long?.faults?.[0]?.message).toBe("the line has 5000001 bytes; accepted is at most 5000000");
    expect(bytes?.faults?.[0]?.message).toMatch(/text in UTF-8/);
    expect([code, last?.title]).toEqual([1, "last"]);
  });

  it("reads a file as it reads standard input, and says what is wrong with one", async () => {
    const file = join(dir, "jobs.jsonl");
    await writeFile(file, `${titled("a")}\r\n${titled("b")}`);
    const { code, out } = await stayput(["check", file, "--lines"]);
    expect([code, ...printed(out).map(({ title }) => title)]).toEqual([0, "a", "b"]);
    expect(await stayput(["check", join(dir, "lost.jsonl"), "--lines"])).toMatchObject({ code: 2, out: "" });
    expect(await stayput(["check", dir, "--lines"])).toMatchObject({ code: 2, out: "" });
    expect(await stayput(["check", "-", "--lines"], "")).toMatchObject({ code: 0, out: "" });
  });

  it("takes the skies of a file for every line, and refuses a bad file before any", async () => {
    const row = Array.from({ length: 6 }, () => 0).join(",");
    const skies = join(dir, "dark.csv");
    await writeFile(skies, row);
    const asked = ["explain", "-", "--lines", "--skies"];
    const long = titled("long").replace('"nights":4', '"nights":9');
    const { out } = await stayput([...asked, skies], `${titled("a")}\n${long}`);
    const [a, b] = printed(out);
    expect(a).toMatchObject({ title: "a", seed: null, draws: 1 });
    expect(b?.faults?.[0]?.message).toMatch(/dark\.csv:1: 6 days were given; the trip needs 10/);
    await writeFile(skies, "0.5,1.7");
    expect(await stayput([...asked, skies], titled("a"))).toMatchObject({ code: 1, out: "" });
    expect(await stayput([...asked, "-"], titled("a"))).toMatchObject({ code: 2, out: "" });
  });

  it("stops after a whole line when asked to, with the code of the signal", async () => {
    const stop = new AbortController();
    stop.abort(130);
    const { code, out } = await stayput(["check", "-", "--lines"], `${titled("a")}\n${titled("b")}`, stop.signal);
    expect(code).toBe(130);
    expect(out === "" || printed(out).length === 1).toBe(true);
  });

  it("is not taken by verbs that it makes no sense for", async () => {
    for (const verb of ["places", "handout"]) {
      expect(await stayput([verb, "-", "--lines"])).toMatchObject({ code: 2, out: "" });
    }
  });
});
