import * as z from "zod";
import type { Found, Keys } from "../faults/fault.ts";
import { pathText } from "../faults/pathText.ts";
import { show } from "../faults/show.ts";
import { quantities, type Dimension } from "../schema/leaf.ts";
import { unwrapped } from "../schema/schemasAt.ts";
import { contextAt, type WordsContext } from "./context.ts";

/** A quantity read from words in the unit of its dimension; or what was given and what is accepted. */
export type WordsResult =
  | { readonly ok: true; readonly value: number; readonly assumption?: string }
  | { readonly ok: false; readonly given: string; readonly accepted: string };

/** Reads a quantity in words into the unit of its dimension. */
export type WordsReader = (text: string, dimension: Dimension, context: WordsContext) => WordsResult;

export interface ReadWords {
  readonly value: unknown;
  readonly faults: readonly Found[];
  readonly notes: readonly string[];
  /** what was typed and what it came to, of every value that was read from words */
  readonly said: readonly Said[];
}

/** A value that was typed in words. */
export interface Said {
  readonly keys: Keys;
  readonly text: string;
  readonly value: number;
}

type Schema = z.core.$ZodType;

/**
 * A copy of a value in which every text that stands where the schema has a quantity is read as a number. The walk goes
 * down the value with the set of schemas that could stand there, so that unions need no choice.
 */
export function readWords(schema: Schema, value: unknown, reader: WordsReader | undefined): ReadWords {
  const faults: Found[] = [];
  const notes: string[] = [];
  const said: Said[] = [];
  const leaf = (text: string, dimension: Dimension, keys: Keys): unknown => {
    const read = reader?.(text, dimension, contextAt(value, keys)) ?? unread;
    if (!read.ok) {
      faults.push({ keys, given: show(text), accepted: read.accepted });
      return text;
    }
    if (read.assumption !== undefined) notes.push(`${pathText(keys)}: ${read.assumption}`);
    said.push({ keys, text, value: read.value });
    return read.value;
  };
  return { value: walk([schema], value, [], leaf), faults, notes, said };
}

const unread: WordsResult = { ok: false, given: "", accepted: "a plain number in the field's own unit" };

type Leaf = (text: string, dimension: Dimension, keys: Keys) => unknown;

function walk(schemas: readonly Schema[], value: unknown, keys: Keys, leaf: Leaf): unknown {
  const here = schemas.flatMap(unwrapped);
  if (typeof value === "string") return readText(here, value, keys, leaf);
  if (Array.isArray(value)) {
    const elements = here.flatMap((schema) => (schema instanceof z.ZodArray ? [schema.element] : []));
    return elements.length === 0 ? value : value.map((entry, i) => walk(elements, entry, [...keys, i], leaf));
  }
  if (typeof value !== "object" || value === null) return value;
  const shapes = here.flatMap((schema) =>
    schema instanceof z.ZodObject ? [schema.shape as Record<string, Schema>] : [],
  );
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => {
      const next = shapes.flatMap((shape) => (Object.hasOwn(shape, key) ? [shape[key]!] : []));
      return [key, next.length === 0 ? entry : walk(next, entry, [...keys, key], leaf)];
    }),
  );
}

function readText(here: readonly Schema[], text: string, keys: Keys, leaf: Leaf): unknown {
  const dimensions = here.map((schema) => quantities.get(schema));
  const dimension = dimensions.every((each) => each !== undefined) ? dimensions[0] : undefined;
  return dimension === undefined ? text : leaf(text, dimension, keys);
}
