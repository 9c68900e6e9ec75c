import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { job } from "./job.ts";
import { cutShort, interrupted, spawned } from "./stayput.ts";

let dir: string;
let file: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), "stayput-"));
  file = join(dir, "job.json");
  await writeFile(file, JSON.stringify(job));
});
afterAll(() => rm(dir, { recursive: true }));

describe("the command as its own process", { timeout: 60_000 }, () => {
  it("answers on standard output with exit 0 and says nothing beside it", async () => {
    const { code, out, err } = await spawned(["explain", file, "--json", "--draws", "10"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(JSON.parse(out).setups).toHaveLength(2);
  });

  it("reads standard input, and ends with 1 on an invalid job", async () => {
    const { code, out, err } = await spawned(["check", "-"], '{ "format": "stayput-job" ');
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toMatch(/not readable as JSON/);
  });

  it("ends with 2 on misuse", async () => {
    expect(await spawned(["explain"])).toMatchObject({ code: 2, out: "" });
  });

  it("takes a reader that closes the pipe early for no fault", async () => {
    const { code, out, err } = await cutShort(["explain", file, "--json", "--draws", "10"]);
    expect({ code, out, err }).toEqual({ code: 0, out: '{"title":"', err: "" });
  });

  it.each([
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const)("leaves whole lines behind on %s, and ends with %i", async (signal, expected) => {
    const line = `${JSON.stringify(job)}\n`;
    const { code, out, err } = await interrupted(
      ["explain", "-", "--lines", "--draws", "10"],
      line.repeat(300),
      signal,
    );
    expect({ code, err }).toEqual({ code: expected, err: "" });
    expect(out.endsWith("}\n")).toBe(true);
    const lines = out.trimEnd().split("\n");
    for (const each of lines) expect(JSON.parse(each)).toMatchObject({ title: "Test job" });
    expect(lines.length).toBeLessThan(300);
  });

  it("hears a request to stop while it waits for a line", async () => {
    const { code, out } = await interrupted(["check", "-", "--lines"], `${JSON.stringify(job)}\n`, "SIGINT");
    expect(code).toBe(130);
    expect(out.split("\n")).toHaveLength(2);
  });

  it("takes a reader of lines that closes the pipe early for no fault", async () => {
    const lines = join(dir, "jobs.jsonl");
    await writeFile(lines, `${JSON.stringify(job)}\n`.repeat(20));
    const { code, out, err } = await cutShort(["check", lines, "--lines"]);
    expect({ code, out, err }).toEqual({ code: 0, out: '{"valid":t', err: "" });
  });
});
