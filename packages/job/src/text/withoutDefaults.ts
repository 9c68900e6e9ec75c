import * as z from "zod";

type Schema = z.core.$ZodType;
type Fields = Record<string, unknown>;

/** A parsed value less what its schema would fill in again: what a person would have written. */
export function withoutDefaults(schema: Schema, value: unknown): unknown {
  const inner = unwrap(schema);
  if (inner instanceof z.ZodUnion) return withoutDefaults(optionFor(inner.options, value), value);
  if (inner instanceof z.ZodArray && Array.isArray(value)) {
    return value.map((entry) => withoutDefaults(inner.element, entry));
  }
  if (!(inner instanceof z.ZodObject) || typeof value !== "object" || value === null) return value;
  const shape = inner.shape as Record<string, Schema>;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key, entry]) => !isDefault(shape[key], entry))
      .map(([key, entry]) => [key, withoutDefaults(shape[key]!, entry)]),
  );
}

function isDefault(schema: Schema | undefined, value: unknown): boolean {
  if (value === undefined || schema === undefined) return true;
  return schema instanceof z.ZodDefault && JSON.stringify(schema.def.defaultValue) === JSON.stringify(value);
}

function unwrap(schema: Schema): Schema {
  const wraps = schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault;
  return wraps ? unwrap(schema.unwrap()) : schema;
}

/** The option of a union that a parsed value came through. */
const optionFor = (options: readonly Schema[], value: unknown): Schema =>
  options.find((option) => option instanceof z.ZodObject && fits(option, value as Fields)) ?? z.unknown();

function fits(option: z.ZodObject, value: Fields): boolean {
  const shape = option.shape as Record<string, Schema>;
  const known = Object.keys(value).every((key) => Object.hasOwn(shape, key));
  return known && Object.entries(shape).every(([key, field]) => present(field, value[key]));
}

function present(field: Schema, value: unknown): boolean {
  if (field instanceof z.ZodLiteral) return field.values.has(value as z.core.util.Literal);
  return value !== undefined || field instanceof z.ZodOptional || field instanceof z.ZodDefault;
}
