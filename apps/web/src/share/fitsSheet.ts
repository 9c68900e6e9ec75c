/** The parts of a JSON Schema that say of what shape a value is. */
interface Shape {
  readonly type?: unknown;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
}

/** Most values in all, and most entries of one list: what the job's own parser looks at. */
const MOST = 60_000;
const WIDEST = 1000;

/**
 * Whether a job not yet valid can stand on the sheet for its blanks to be put right: the lists and groups of fields are
 * those of the schema, none is unknown, and only what stands in a single field may be wrong or missing.
 */
export function fitsSheet(value: unknown, schema: object): boolean {
  const left = { count: MOST };
  return fits(value, schema, left) && left.count >= 0;
}

function fits(value: unknown, shape: Shape, left: { count: number }): boolean {
  if (--left.count < 0) return false;
  const branches = shape.anyOf ?? shape.oneOf;
  if (branches !== undefined) return branches.some((branch) => fits(value, branch, left));
  if (Array.isArray(value)) return listFits(value, shape, left);
  if (typeof value === "object" && value !== null) return fieldsFit(value, shape, left);
  return leafFits(value, shape);
}

/** What can come of typing and picking: a text stands where a figure should, but never a figure for a text. */
function leafFits(value: unknown, shape: Shape): boolean {
  if ("const" in shape) return value === shape.const;
  if (shape.enum !== undefined) return shape.enum.includes(value);
  if (shape.type === "number" || shape.type === "integer")
    return typeof value === "number" || typeof value === "string";
  if (shape.type === "null") return value === null;
  return value !== null && shape.type === typeof value;
}

const listFits = (list: readonly unknown[], { type, items }: Shape, left: { count: number }): boolean =>
  type === "array" && list.length <= WIDEST && list.every((each) => items === undefined || fits(each, items, left));

function fieldsFit(value: object, { type, properties = {}, required = [] }: Shape, left: { count: number }): boolean {
  if (type !== "object") return false;
  const known = Object.entries(value).every(([name, each]) => {
    const shape = Object.hasOwn(properties, name) ? properties[name] : undefined;
    return shape !== undefined && fits(each, shape, left);
  });
  return known && required.every((name) => Object.hasOwn(value, name) || mayBeBlank(properties[name]));
}

/** A figure that was cleared is left out of the job; a text stays as an empty one, and nothing else can be cleared. */
function mayBeBlank(shape: Shape | undefined): boolean {
  const branches = shape?.anyOf ?? shape?.oneOf;
  if (branches !== undefined) return branches.some(mayBeBlank);
  return shape?.type === "number" || shape?.type === "integer";
}
