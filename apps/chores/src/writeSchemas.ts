import { jobJsonSchema } from "@stayput/job";
import { mkdirSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { answerSchemaFiles } from "./answerSchemas.ts";
import { jobFileTable } from "./jobFileTable.ts";

const intro = `# The job file

Written by \`npm run schemas\` from the schema; do not edit. JSON, one job a file. Hours are decimal clock hours of standard
time, shares run from 0 to 1, directions clockwise from north. Where "words" are accepted a quantity may be a text with its
unit: "3 A", "55 Ah/day", "1.2 kWh/day", "6 mm2", "10 AWG", "2 h 30", "18:30", "60 %". A field that is not listed is an error.
Examples are in \`shared/demo\`.

`;

/** The files that are made from the schemas, by their paths from the root. */
export async function schemaFiles(): Promise<Record<string, string>> {
  const schema = jobJsonSchema();
  return {
    "shared/schema/job.schema.json": await format(JSON.stringify(schema), { parser: "json", printWidth: 120 }),
    "packages/job/JOB-FILE.md": await format(intro + jobFileTable(schema), {
      parser: "markdown",
      printWidth: 120,
    }),
  };
}

if (import.meta.filename === process.argv[1]) {
  mkdirSync("shared/schema", { recursive: true });
  const files = { ...(await schemaFiles()), ...(await answerSchemaFiles()) };
  for (const [path, text] of Object.entries(files)) writeFileSync(path, text);
}
