import * as z from "zod";
import { jobSchema } from "./schema/job.ts";
import { quantities } from "./schema/leaf.ts";

/**
 * The job file as JSON Schema, draft 2020-12, from the zod schema. Quantities may stand as numbers or in words. What one
 * field asks of another (ids, references, one size of cable) it cannot say; parseJob can.
 */
export function jobJsonSchema(): z.core.JSONSchema.JSONSchema {
  return z.toJSONSchema(jobSchema, {
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      if (!quantities.has(zodSchema)) return;
      const { description, ...number } = jsonSchema;
      for (const key of Object.keys(number)) Reflect.deleteProperty(jsonSchema, key);
      jsonSchema.anyOf = [number, inWords];
      if (description !== undefined) jsonSchema.description = description;
    },
  });
}

const inWords = { type: "string", maxLength: 64, description: 'In words with a unit, such as "3 A"' } as const;
