/** The job file's fields as tables for people, from its JSON Schema. */

type Json = Readonly<Record<string, unknown>>;

const asJson = (value: unknown): Json => (typeof value === "object" && value !== null ? (value as Json) : {});
const asList = (value: unknown): Json[] => (Array.isArray(value) ? value.map(asJson) : []);
const text = (value: unknown): string => (typeof value === "string" ? value : "");
const code = (value: unknown): string => `\`${JSON.stringify(value)}\``;

/** A section for each object, outermost first. */
export function jobFileTable(schema: Json): string {
  const byName = new Map(sections("the job", schema).map((text) => [text.split("\n", 1)[0], text]));
  return [...byName.values()].join("\n\n");
}

function sections(path: string, schema: Json): string[] {
  const forms = objectsOf(schema);
  return forms.flatMap((form, i) => {
    const name = forms.length > 1 ? `${path}, ${formName(form, i)}` : path;
    return [section(name, form), ...inner(path === "the job" ? "" : path, form)];
  });
}

const formName = (form: Json, index: number): string => {
  const kind = asJson(asJson(form["properties"])["kind"])["const"];
  return kind === undefined ? `form ${index + 1}` : `kind ${code(kind)}`;
};

function inner(path: string, form: Json): string[] {
  return Object.entries(asJson(form["properties"])).flatMap(([key, field]) => {
    const list = listOf(asJson(field));
    const at = `${path}${path === "" ? "" : "."}${key}${list === null ? "" : "[]"}`;
    const within = list ?? asJson(field);
    return seen(path, key) ? [] : objectsOf(within).length > 0 ? sections(at, within) : [];
  });
}

/** Loads, paths and places come again further in; their tables are told once. */
const seen = (path: string, key: string): boolean =>
  (path.endsWith("loads") && key === "add") ||
  (path.endsWith("runs[]") && key === "path") ||
  (path !== "" && key === "place");

function section(name: string, form: Json): string {
  const required = new Set(Array.isArray(form["required"]) ? form["required"] : []);
  const rows = Object.entries(asJson(form["properties"])).map(([key, field]) =>
    row(key, asJson(field), required.has(key)),
  );
  return [
    `## ${name}`,
    "",
    `${text(form["description"])}.`,
    "",
    "| field | what | accepted | left out |",
    "|---|---|---|---|",
    ...rows,
  ].join("\n");
}

function row(key: string, field: Json, required: boolean): string {
  const absent = required ? "must be given" : "default" in field ? code(field["default"]) : "may be left out";
  return `| \`${key}\` | ${about(field)} | ${accepted(field)} | ${absent} |`;
}

const about = (field: Json): string =>
  (
    text(field["description"]) || text(asList(field["anyOf"]).find((each) => each["description"])?.["description"])
  ).replaceAll("|", "\\|");

/** What a field accepts, in a few words. */
function accepted(field: Json): string {
  const options = [...asList(field["anyOf"]), ...asList(field["oneOf"])];
  if (options.length > 0) return [...new Set(options.map(accepted))].join(" or ");
  if ("const" in field) return code(field["const"]);
  if (Array.isArray(field["enum"])) return field["enum"].map(code).join(" ");
  return byType(field);
}

function byType(field: Json): string {
  const { minimum, maximum, minItems, maxItems, maxLength } = field;
  if (field["type"] === "number") return `${String(minimum)} to ${String(maximum)}`;
  if (field["type"] === "integer") return `whole, ${String(minimum)} to ${String(maximum)}`;
  if (field["type"] === "array")
    return `list of ${typeof minItems === "number" ? `${minItems} to ` : "at most "}${String(maxItems)}`;
  if (field["type"] === "string")
    return text(field["description"]).startsWith("In words")
      ? "words"
      : `text${typeof maxLength === "number" ? `, at most ${maxLength}` : ""}`;
  if (field["type"] === "object") return "an object";
  return field["type"] === "null" ? "`null`" : "true or false";
}

/** The objects that may stand in a field: itself, or those of its union. */
function objectsOf(field: Json): Json[] {
  if (field["type"] === "object") return [field];
  return [...asList(field["anyOf"]), ...asList(field["oneOf"])].flatMap(objectsOf);
}

/** What a list holds; null where a field is no list. */
function listOf(field: Json): Json | null {
  const lists = [field, ...asList(field["anyOf"])].filter(({ type }) => type === "array");
  return lists[0] === undefined ? null : asJson(lists[0]["items"]);
}
