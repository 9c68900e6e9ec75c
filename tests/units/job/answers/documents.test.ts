import { Ajv, type ValidateFunction } from "ajv";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { parseJobText } from "../../../../packages/job/src/index.ts";
import { answerSchemaFiles, type Answered } from "../../../../apps/chores/src/answerSchemas.ts";
import { anyJob } from "../../../laws/arbitraries/job.ts";
import { stayput } from "../../cli/stayput.ts";
import { projectFile } from "../helpers.ts";

const demos = ["shared/demo/family-caravan.json", "shared/demo/bush-camper.json"];
const few = ["--draws", "10"];

const schemaOf = (answered: Answered): object =>
  JSON.parse(projectFile(`shared/schema/${answered}.schema.json`)) as object;
const checked = new Map<Answered, ValidateFunction>();

/** What is wrong with a document by its schema, in which no field but those named may stand; nothing where it is right. */
function wrongWith(answered: Answered, document: unknown): unknown {
  const validate =
    checked.get(answered) ?? new Ajv({ strict: true, allowUnionTypes: true }).compile(schemaOf(answered));
  checked.set(answered, validate);
  return validate(document) ? null : validate.errors;
}

async function printed(...args: string[]): Promise<unknown> {
  const { code, out, err } = await stayput(args);
  expect(err).not.toContain("Error");
  expect(code).toBe(0);
  return JSON.parse(out);
}

describe("schemas of the answers", { timeout: 120_000 }, () => {
  it("are current: run `npm run schemas` where they are not", async () => {
    for (const [path, text] of Object.entries(await answerSchemaFiles())) expect(projectFile(path), path).toBe(text);
  });

  it.each(
    demos.flatMap((demo) =>
      (["explain", "compare", "size", "year", "upgrades", "wiring", "check", "hours"] as const).map(
        (verb) => [verb, demo] as const,
      ),
    ),
  )("%s of %s is as its schema says", async (verb, demo) => {
    const drawn = verb === "wiring" || verb === "check" || verb === "hours" ? [] : few;
    const document = await printed(verb, demo, "--json", ...drawn);
    expect(wrongWith(verb, document)).toBeNull();
  });

  it("explain, compare, size, wiring and hours of any job are as their schemas say", async () => {
    await fc.assert(
      fc.asyncProperty(anyJob, async (job) => {
        for (const verb of ["explain", "compare", "size", "wiring", "hours"] as const) {
          const drawn = verb === "wiring" || verb === "hours" ? [] : ["--draws", "3"];
          const { code, out, err } = await stayput([verb, "-", "--json", ...drawn], JSON.stringify(job));
          expect({ code, err }, verb).toMatchObject({ code: 0 });
          expect(wrongWith(verb, JSON.parse(out)), verb).toBeNull();
        }
      }),
      { numRuns: 12 },
    );
  });

  it("match is as its schema says", async () => {
    expect(wrongWith("match", await printed("match", demos[0]!, "--json", ...few))).toBeNull();
  });

  it("places is as its schema says", async () => {
    expect(wrongWith("places", await printed("places", "char", "--json"))).toBeNull();
  });

  it("upgrades to any proposal is as its schema says", async () => {
    const { setups } = JSON.parse(projectFile(demos[0]!)) as { setups: { id: string }[] };
    for (const { id } of setups.slice(1)) {
      expect(wrongWith("upgrades", await printed("upgrades", demos[0]!, "--json", "--to", id, ...few))).toBeNull();
    }
  });

  it("lines are as the schema of the verb says, or as that of their faults", async () => {
    const job = JSON.stringify(JSON.parse(projectFile(demos[0]!)));
    const { code, out } = await stayput(["compare", "-", "--lines", ...few], `${job}\n{ "format": 3 }\n{\n${job}\n`);
    expect(code).toBe(1);
    const [first, second, third, fourth] = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as unknown);
    expect([wrongWith("compare", first), wrongWith("compare", fourth)]).toEqual([null, null]);
    expect([wrongWith("line-faults", second), wrongWith("line-faults", third)]).toEqual([null, null]);
  });

  it("faults are as their schema says", () => {
    const refused = parseJobText('{ "format": "stayput-job", "version": 1, "place": { "id": 3 }, "lodes": [] }');
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(wrongWith("faults", { faults: refused.faults })).toBeNull();
  });

  describe("are strict", () => {
    let compare: Record<string, unknown>;
    beforeAll(async () => {
      compare = (await printed("compare", demos[0]!, "--json", ...few)) as Record<string, unknown>;
    });
    it.each([
      ["a field more", (whole: Record<string, unknown>) => ({ ...whole, extra: 1 })],
      ["a field less", ({ draws: _, ...rest }: Record<string, unknown>) => rest],
      ["a number in words", (whole: Record<string, unknown>) => ({ ...whole, draws: "8" })],
      ["null where there must be a number", (whole: Record<string, unknown>) => ({ ...whole, nights: null })],
    ])("%s is refused", (_, spoil) => {
      expect(wrongWith("compare", compare)).toBeNull();
      expect(wrongWith("compare", spoil(compare))).not.toBeNull();
    });
  });
});
