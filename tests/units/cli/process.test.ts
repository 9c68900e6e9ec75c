import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { job } from "./job.ts";
import { cutShort, spawned } from "./stayput.ts";

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
});
