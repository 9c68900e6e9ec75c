import { explain } from "@stayput/sim";
import { parseJobText, resolve } from "@stayput/job";
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { describe, expect, it, vi } from "vitest";
import { asWritten, readmeBlocks, withPromises } from "../fixtures/readme/blocks.ts";

/** Every block of code in a package's README runs, from the sources, and gives what the README says beside it. */
const root = new URL("../../", import.meta.url);
const packages = readdirSync(new URL("packages/", root)).filter((name) =>
  existsSync(new URL(`packages/${name}/package.json`, root)),
);
const scratch = new URL(".cache/readme/", root);
mkdirSync(scratch, { recursive: true });

const demo = new URL("shared/demo/family-caravan.json", root);

async function demoStudy() {
  const read = parseJobText(readFileSync(demo, "utf8"));
  const found = read.ok ? await resolve(read.job) : read;
  if (!found.ok) throw new Error("the demo job is not valid");
  return found.study;
}

/** What a block may ask to stand ready. */
const ready: Record<string, () => unknown> = {
  text: () => readFileSync(demo, "utf8"),
  study: demoStudy,
  answer: async () => explain(await demoStudy(), { skies: { seed: 1, draws: 20 } }),
};

/** Runs a block as a module of its own; files named in it are looked for among the demo jobs. */
async function run(name: string, code: string, given: readonly string[]): Promise<string[]> {
  const missed: string[] = [];
  vi.stubGlobal("promised", (value: unknown, written: string) => {
    if (!asWritten(value, written)) missed.push(`written ${written}, but ${JSON.stringify(value)}`);
  });
  for (const each of given) vi.stubGlobal(each, await ready[each]?.());
  const file = new URL(`${name}.ts`, scratch);
  writeFileSync(file, code.replaceAll('"family-caravan.json"', JSON.stringify(demo.pathname)));
  const quiet = vi.spyOn(console, "log").mockImplementation(() => undefined);
  await import(/* @vite-ignore */ file.pathname);
  quiet.mockRestore();
  vi.unstubAllGlobals();
  return missed;
}

describe.each(packages)("README of %s", (name) => {
  const blocks = readmeBlocks(new URL(`packages/${name}/README.md`, root));

  it("has an example that promises a value", () => {
    const promises = blocks.map(({ code }) => withPromises(code).promises);
    expect(promises.reduce((sum, each) => sum + each, 0)).toBeGreaterThan(0);
  });

  it.each(blocks)("runs as written: example $number", async ({ number, given, code }) => {
    expect(await run(`${name}-${number}`, withPromises(code).code, given)).toEqual([]);
  });
});

describe("what counts as written", () => {
  it.each([
    [36.6875, "36.68…", true],
    [36.6875, "36.69…", false],
    [["a b", 1], '["a b", 1]', true],
    [["ab", 1], '["a b", 1]', false],
    [{ id: "x", ok: true }, '{ "id": "x", … }', true],
    [null, "null", true],
    [undefined, "null", false],
  ])("%j against %s: %s", (value, written, agrees) => expect(asWritten(value, written)).toBe(agrees));

  it("takes values, and lets prose be", () => {
    const code = 'f(1); // 2\nconsole.log(g()); // "x"\nh(); // how good it is\nconst a = 3; // 3\n';
    expect(withPromises(code).promises).toBe(2);
  });
});

it("every package carries the licence as it stands at the root", () => {
  const licence = readFileSync(new URL("LICENSE", root), "utf8");
  for (const name of packages) expect(readFileSync(new URL(`packages/${name}/LICENSE`, root), "utf8")).toBe(licence);
});
