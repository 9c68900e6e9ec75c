import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { devNull, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { wordsOf } from "../handout/handover.ts";
import { job } from "./job.ts";
import { root, stayput } from "./stayput.ts";

let folder: string;
let file: string;
let out: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stayput-handout-"));
  file = join(folder, "job.json");
  writeFileSync(file, JSON.stringify(job));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeEach(() => {
  out = join(folder, "out.html");
  rmSync(out, { force: true });
});

const quick = ["--draws", "10", "--date", "2026-11-02", "--locale", "en-GB"];

describe("handout", { timeout: 60_000 }, () => {
  it("writes both pages to a file, and nothing to standard output", async () => {
    const outcome = await stayput(["handout", file, "--out", out, ...quick]);
    expect(outcome).toMatchObject({ code: 0, out: "" });
    expect(outcome.err).toContain(`written to ${out}`);
    const html = readFileSync(out, "utf8");
    expect(html.startsWith("<!doctype html>")).toBe(true);
    expect(html).toContain("font/woff2"); // its own type goes with it
    const words = wordsOf(html);
    for (const part of [
      "Test job",
      "2 November 2026",
      "Now: parked at Upington (Kalahari) in January",
      "For the fitter",
    ])
      expect(words).toContain(part);
  });

  it("without --out prints the same to standard output", async () => {
    await stayput(["handout", file, "--out", out, ...quick]);
    const { code, out: printed, err } = await stayput(["handout", file, ...quick]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(printed).toBe(readFileSync(out, "utf8"));
  });

  it("never writes over a file that is there unless told to, and the job's own not even then", async () => {
    writeFileSync(out, "mine");
    const refused = await stayput(["handout", file, "--out", out, ...quick]);
    expect(refused).toMatchObject({ code: 2, out: "" });
    expect(refused.err).toContain("it is there already; --replace writes over it");
    expect(readFileSync(out, "utf8")).toBe("mine");
    expect((await stayput(["handout", file, "--out", out, "--replace", ...quick])).code).toBe(0);
    expect(readFileSync(out, "utf8")).toContain("<!doctype html>");
    const own = await stayput(["handout", file, "--out", file, "--replace", ...quick]);
    expect(own).toMatchObject({ code: 2, out: "" });
    rmSync(out);
    symlinkSync(file, out);
    expect(await stayput(["handout", file, "--out", out, "--replace", ...quick])).toMatchObject({ code: 2, out: "" });
    expect(JSON.parse(readFileSync(file, "utf8"))).toEqual(job);
  });

  it("writes where there is nothing to lose: an empty file, or a device", async () => {
    writeFileSync(out, "");
    expect((await stayput(["handout", file, "--out", out, ...quick])).code).toBe(0);
    expect(readFileSync(out, "utf8")).toContain("<!doctype html>");
    expect((await stayput(["handout", file, "--out", devNull, ...quick])).code).toBe(0);
  });

  it("prints one setup under its own letter, and still looks at the others for the stage after", async () => {
    const demo = join(root, "shared/demo/family-caravan.json");
    const words = wordsOf((await stayput(["handout", demo, "--setup", "lithium", ...quick])).out);
    expect(words).toContain("C 200 Ah lithium, 450 W, converter");
    expect(words).not.toContain("Second panel");
    const whole = wordsOf((await stayput(["handout", demo, ...quick])).out);
    expect(words.includes("stage after:")).toBe(whole.includes("stage after:"));
  });

  it("puts in the workshop's own mark, and refuses what is none", async () => {
    const logo = join(folder, "logo.svg");
    writeFileSync(logo, "<svg xmlns='http://www.w3.org/2000/svg'/>");
    expect((await stayput(["handout", file, "--logo", logo, ...quick])).out).toContain(
      'src="data:image/svg+xml;base64,',
    );
    writeFileSync(logo, "<html></html>");
    const refused = await stayput(["handout", file, "--logo", logo, ...quick]);
    expect(refused).toMatchObject({ code: 1, out: "" });
    expect(refused.err).toContain("PNG, JPEG or SVG");
    writeFileSync(logo, Buffer.alloc(3_000_000));
    expect((await stayput(["handout", file, "--logo", logo, ...quick])).err).toContain("at most 200 kB");
  });

  it.each([
    ["a day that is none", ["--date", "2026-02-30"], '--date: "2026-02-30" was given; accepted is a day as YYYY-MM-DD'],
    ["a tag that is none", ["--locale", "!!"], '--locale: "!!" was given; accepted is a language tag'],
    ["a logo that is not there", ["--logo", "/nowhere/logo.png"], "there is no such file"],
    ["no name to write to", ["--out", ""], '--out: "" was given; accepted is the name of a file'],
    ["no name of a logo", ["--logo", ""], '--logo: "" was given; accepted is the name of a file'],
    ["a directory", ["--out", tmpdir()], "it is a directory; a file is needed"],
    ["a directory that is not there", ["--out", "/nowhere/at/all.html"], "there is no such directory"],
    ["a directory to write to", ["--out", "/", "--replace"], "it is a directory"],
  ])("%s: exit 2, with the reason", async (_what, args, reason) => {
    const { code, out: printed, err } = await stayput(["handout", file, "--draws", "10", ...args]);
    expect({ code, printed }).toEqual({ code: 2, printed: "" });
    expect(err).toContain(reason);
  });
});
