import { describe, expect, it } from "vitest";
import { schemaFiles } from "../../../apps/chores/src/writeSchemas.ts";
import { projectFile } from "./helpers.ts";

describe("files made from the schema", () => {
  it("are current: run `npm run schemas` where they are not", async () => {
    for (const [path, text] of Object.entries(await schemaFiles())) expect(projectFile(path), path).toBe(text);
  });
  it("describe every field", () => {
    const bare: string[] = [];
    const look = (value: unknown, path: string): void => {
      if (typeof value !== "object" || value === null) return;
      for (const [key, each] of Object.entries(value)) look(each, `${path}.${key}`);
      const properties = (value as Record<string, unknown>)["properties"] ?? {};
      for (const [key, field] of Object.entries(properties as Record<string, object>)) {
        if (key !== "kind" && !JSON.stringify(field).includes('"description"')) bare.push(`${path}.${key}`);
      }
    };
    look(JSON.parse(projectFile("shared/schema/job.schema.json")), "");
    expect(bare).toEqual([]);
  });
});
