import * as z from "zod";

/** What a number measures, so that a value typed in words ("3 A", "2 h 30") can be read into the field's own unit. */
export type Dimension =
  | "current_A"
  | "power_W"
  | "volts_V"
  | "charge_Ah"
  | "energy_Wh_day"
  | "length_m"
  | "area_mm2"
  | "diameter_mm"
  | "resistance_mOhm"
  | "temperature_C"
  | "difference_K"
  | "angle_deg"
  | "duration_h"
  | "minutes"
  | "clock_h"
  | "share"
  | "mass_kg"
  | "mass_kg_day"
  | "gas_g_day"
  | "volume_L"
  | "height_m";

/** Which numbers of the schema are quantities, and of what: read by the walk that turns words into numbers. */
export const quantities = new WeakMap<z.core.$ZodType, Dimension>();

const unitOf: Record<Dimension, string> = {
  current_A: "A",
  power_W: "W",
  volts_V: "V",
  charge_Ah: "Ah",
  energy_Wh_day: "Wh a day",
  length_m: "m",
  area_mm2: "mm²",
  diameter_mm: "mm",
  resistance_mOhm: "mΩ",
  temperature_C: "°C",
  difference_K: "K",
  angle_deg: "°",
  duration_h: "h",
  minutes: "min",
  clock_h: "clock hour",
  share: "share",
  mass_kg: "kg",
  mass_kg_day: "kg a day",
  gas_g_day: "g a day",
  volume_L: "L",
  height_m: "m",
};

/** The words in which a fault says what a number field accepts. */
const range = (kind: string, min: number, max: number, unit?: string): string =>
  `${kind} from ${min} to ${max}${unit === undefined ? "" : ` (${unit})`}`;

/** A number with its range and unit. The description goes to the JSON Schema and the field table. */
export function quantity(about: string, dimension: Dimension, min: number, max: number): z.ZodNumber {
  const accepted = range("a number", min, max, unitOf[dimension]);
  const schema = z
    .number({ error: accepted })
    .min(min, { error: accepted })
    .max(max, { error: accepted })
    .describe(`${about} [${unitOf[dimension]}]`);
  quantities.set(schema, dimension);
  return schema;
}

/** A plain number without a unit, such as a price. */
export function plain(about: string, min: number, max: number): z.ZodNumber {
  const accepted = range("a number", min, max);
  return z.number({ error: accepted }).min(min, { error: accepted }).max(max, { error: accepted }).describe(about);
}

/** A whole number. */
export function whole(about: string, min: number, max: number): z.ZodNumber {
  const accepted = range("a whole number", min, max);
  return z
    .number({ error: accepted })
    .int({ error: accepted })
    .min(min, { error: accepted })
    .max(max, { error: accepted })
    .describe(about);
}

/** One line of text for people: no control characters (they drive terminals), no broken surrogates (links would lose them). */
export function line(about: string, max: number, min = 0): z.ZodString {
  const accepted = `text of ${min > 0 ? `${min} to` : "at most"} ${max} characters on one line, without control characters`;
  return z
    .string({ error: accepted })
    .min(min, { error: accepted })
    .max(max, { error: accepted })
    .regex(/^[^\p{Cc}\p{Cs}\u2028\u2029]*$/u, { error: accepted, abort: true })
    .describe(about);
}

/** Text of several lines. */
export function prose(about: string, max: number): z.ZodString {
  const accepted = `text of at most ${max} characters, without control characters but line ends and tabs`;
  return z
    .string({ error: accepted })
    .max(max, { error: accepted })
    .regex(/^(?:[^\p{Cc}\p{Cs}]|[\n\r\t])*$/u, { error: accepted })
    .describe(about);
}

/** Names that JavaScript objects already have: refused as ids, and told apart as keys. */
export const forbiddenNames: readonly string[] = ["__proto__", "constructor", "prototype"];

/** A short name by which one part of a job points at another. */
export function id(about: string): z.ZodString {
  const accepted = "1 to 40 letters, digits, hyphens or underscores, beginning with a letter or digit";
  return z
    .string({ error: accepted })
    .regex(/^(?!(?:constructor|prototype)$)[A-Za-z0-9][A-Za-z0-9_-]{0,39}$/, { error: accepted })
    .describe(about);
}

/** One word of a few. */
export function choice<const T extends readonly [string, ...string[]]>(
  about: string,
  words: T,
): z.ZodEnum<{ [K in T[number]]: K }> {
  return z.enum(words, { error: words.map((word) => JSON.stringify(word)).join(" or ") }).describe(about);
}

/** true or false. */
export const flag = (about: string): z.ZodBoolean => z.boolean({ error: "true or false" }).describe(about);

/** A day of the year without a year: month and day, 29 February included. */
export function monthDay(about: string): z.ZodString {
  const accepted = 'a month and a day as "MM-DD", such as "07-10"';
  return z
    .string({ error: accepted })
    .regex(/^(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|02-(?:0[1-9]|[12]\d))$/, {
      error: accepted,
    })
    .describe(about);
}

/** A list with a longest length. */
export function list<T extends z.ZodType>(about: string, of: T, max: number, min = 0): z.ZodArray<T> {
  const sizes = min === max ? `${max}` : min > 0 ? `${min} to ${max}` : `at most ${max}`;
  const accepted = `a list of ${sizes}`;
  return z.array(of, { error: accepted }).min(min, { error: accepted }).max(max, { error: accepted }).describe(about);
}

/**
 * An object that refuses fields it does not know. The message of an unknown field lists those it knows, from which
 * faults/fromIssues.ts offers the nearest.
 */
export function fields<const S extends z.core.$ZodLooseShape>(about: string, shape: S): z.ZodObject<S, z.core.$strict> {
  const known = Object.keys(shape).join(", ");
  return z
    .strictObject(shape, { error: (issue) => (issue.code === "unrecognized_keys" ? known : `an object: { ${known} }`) })
    .describe(about);
}

/** One of several objects told apart by their `kind`. */
export function kinds<const T extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]]>(
  options: T,
): z.ZodDiscriminatedUnion<T, "kind"> {
  return z.discriminatedUnion("kind", options, { error: "an object with a `kind`" });
}
