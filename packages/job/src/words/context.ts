import { bankDefaults } from "../defaults.ts";
import { asFields, at } from "../faults/at.ts";
import type { Keys } from "../faults/fault.ts";

/** Mains volts that amps of an ac load are taken at (IEC 60038). */
const MAINS_V = 230;

/** What a value typed in words may lean on. */
export interface WordsContext {
  /** volts at which amps and amp-hours are turned into watts and watt-hours, and back [V] */
  readonly volts_V: number;
}

/** The volts that stand around a path: mains for an ac load, the setup's bank, or the first setup's. */
export function contextAt(job: unknown, keys: Keys): WordsContext {
  const ac = keys.some((_, i) => asFields(at(job, keys.slice(0, i)))["supply"] === "ac");
  if (ac || keys.at(-1) === "element_ac_W") return { volts_V: MAINS_V };
  const setup = keys[0] === "setups" ? keys.slice(0, 2) : ["setups", 0];
  const nominal_V = at(job, [...setup, "bank", "nominal_V"]);
  return { volts_V: nominal_V === 24 ? 24 : bankDefaults.nominal_V };
}
