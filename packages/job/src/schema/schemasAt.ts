import * as z from "zod";
import type { Keys } from "../faults/fault.ts";

type Schema = z.core.$ZodType;

/** The schemas that could stand at a path below a schema, with what wraps them; none where the path leads nowhere. */
export function schemasAt(schema: Schema, keys: Keys): Schema[] {
  return keys.reduce<Schema[]>(
    (here, key) => here.flatMap((each) => unwrapped(each)).flatMap((each) => below(each, key)),
    [schema],
  );
}

function below(schema: Schema, key: string | number): Schema[] {
  if (schema instanceof z.ZodArray) return typeof key === "number" ? [schema.element] : [];
  if (!(schema instanceof z.ZodObject)) return [];
  const shape = schema.shape as Record<string, Schema>;
  return Object.hasOwn(shape, key) ? [shape[key]!] : [];
}

/** The schemas inside optional, nullable, default and union, which say nothing of the value itself. */
export function unwrapped(schema: Schema): Schema[] {
  const found = known.get(schema) ?? inside(schema);
  known.set(schema, found);
  return found;
}

const known = new WeakMap<Schema, Schema[]>();

function inside(schema: Schema): Schema[] {
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((option) => unwrapped(option));
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault) {
    return unwrapped(schema.unwrap());
  }
  return [schema];
}
