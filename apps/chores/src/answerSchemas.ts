import { format } from "prettier";
import { createGenerator } from "ts-json-schema-generator";

const source = "packages/job/src/answers/documents.ts";

/** Which type each schema file is made from, by the verb or question that it answers. */
const documents = {
  explain: "ExplainDocument",
  compare: "CompareDocument",
  size: "SizeDocument",
  match: "MatchDocument",
  wiring: "WiringDocument",
  hours: "HoursDocument",
  check: "CheckDocument",
  places: "PlacesDocument",
  faults: "FaultsDocument",
  "line-faults": "LineFaultsDocument",
  year: "YearDocument",
  upgrades: "UpgradesDocument",
} as const;

export type Answered = keyof typeof documents;

/** JSON Schemas (draft 7) of every answer, made from the TypeScript types, by their paths from the root. */
export async function answerSchemaFiles(): Promise<Record<string, string>> {
  const generator = createGenerator({
    path: source,
    tsconfig: "tsconfig.json",
    skipTypeCheck: true, // `npm run types` checks; the generator brings an older compiler
    additionalProperties: false,
    topRef: false,
    jsDoc: "extended",
    sortProps: false,
  });
  const files: Record<string, string> = {};
  for (const [answered, type] of Object.entries(documents)) {
    const text = JSON.stringify(generator.createSchema(type));
    files[`shared/schema/${answered}.schema.json`] = await format(text, { parser: "json", printWidth: 120 });
  }
  return files;
}
