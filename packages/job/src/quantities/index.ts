/**
 * Units in words.
 *
 * @module @stayput/job/quantities
 */
import type { Dimension } from "../schema/leaf.ts";
import { oneLine } from "../faults/show.ts";
import type { WordsContext } from "../words/context.ts";
import type { WordsReader } from "../words/readWords.ts";
import { bareNumber, pointed } from "./number.ts";
import { readers, type Volts } from "./readers.ts";

/** A quantity that was read. */
export interface Quantity {
  readonly ok: true;
  /** in `unit`, the field's own */
  readonly value: number;
  readonly unit: string;
  /** what had to be assumed, such as the volts of "3 A" */
  readonly assumption?: string;
}

/** A text that is no quantity, or none of the dimension asked: what was given, and what is accepted. */
export interface NotAQuantity {
  readonly ok: false;
  readonly given: string;
  readonly accepted: string;
}

const LONGEST = 64;

/**
 * Reads a quantity as people write it: "3 A", "55 Ah/day", "1.2 kWh/day", "6 mm2", "10 AWG", "2 h 30", "60 %". A bare
 * number is in the field's own unit. Amps become watts at the context's volts, and the result says so; "3 A at 24 V"
 * brings its own. A comma is a decimal comma, but not before three figures. The range is the schema's to check.
 *
 * @param text at most 64 characters
 * @param dimension what the field measures, which decides its unit
 * @param context the volts around the field
 * @returns the value, finite; or what is accepted. Never throws
 */
export function parseQuantity(text: string, dimension: Dimension, context: WordsContext): Quantity | NotAQuantity {
  const { unit, accepted, read } = readers[dimension];
  const refuse = (instead = accepted): NotAQuantity => ({ ok: false, given: oneLine(text), accepted: instead });
  if (text.length > LONGEST) return refuse();
  const number = pointed(text);
  if (!number.ok) return refuse(number.accepted);
  const bare = bareNumber(number.text);
  if (bare !== null) return { ok: true, value: bare, unit };
  const { amount, volts } = apart(number.text, context);
  const reading = read(amount, volts);
  if (reading === null || !Number.isFinite(reading.value)) return refuse();
  return { ok: true, unit, ...reading };
}

/** "3 A at 24 V" in its two parts. */
function apart(text: string, context: WordsContext): { amount: string; volts: Volts } {
  const parts = /^(.*\S)\s*(?:@|\bat\b)\s*(\d{1,3}(?:\.\d+)?)\s*V$/i.exec(text.trim());
  const value_V = Number(parts?.[2] ?? 0);
  if (parts === null || !(value_V > 0))
    return { amount: text.trim(), volts: { value_V: context.volts_V, given: false } };
  return { amount: parts[1]!, volts: { value_V, given: true } };
}

/** For parseJob and parseJobText: `parseJobText(text, { words })`. */
export const words: WordsReader = parseQuantity;

export type { Dimension, WordsContext };
