import type { Fault, JobInput } from "@stayput/job";
import type { ExplainAnswer } from "@stayput/sim";
import { html, type TemplateResult } from "lit";
import type { Choice } from "../fields/choiceField.ts";
import { shown, type FieldKind } from "../fields/typed.ts";
import { getAt, pathText, type Keys } from "../store/at.ts";
import type { Read } from "../worker/protocol.ts";

/** Everything a row of the sheet shows: the job as typed, its faults, and what it last came to. */
export interface Card {
  readonly job: JobInput;
  readonly faults: ReadonlyMap<string, Fault>;
  readonly read: Read | null;
  readonly answer: ExplainAnswer | null;
}

export interface BlankOptions {
  readonly kind?: FieldKind;
  readonly unit?: string;
  /** default in grey, where the read job has none */
  readonly standard?: string;
  /** the same value in the setup on the left */
  readonly leftKeys?: Keys | null;
  readonly quiet?: boolean;
  readonly lines?: number;
  /** has no default to fall back on */
  readonly needed?: boolean;
}

/** What stands at a path: as typed, else its default. */
export const meant = ({ job, read }: Card, keys: Keys): unknown => getAt(job, keys) ?? getAt(read?.job, keys);

/** A blank of the sheet for the value at a path. */
export function blank(card: Card, keys: Keys, label: string, options: BlankOptions = {}): TemplateResult {
  const { kind = "number", unit = "", standard, leftKeys = null, quiet = false, lines = 1, needed = false } = options;
  const grey = standard ?? shown(kind, getAt(card.read?.job, keys));
  return html`<value-field
    class="field"
    .label=${label}
    .keys=${keys}
    .kind=${kind}
    .unit=${unit}
    .standard=${grey}
    .was=${leftKeys === null ? "" : wasText(card, keys, leftKeys, kind, unit)}
    .quiet=${quiet}
    .lines=${lines}
    .needed=${needed}
    .value=${getAt(card.job, keys)}
    .fault=${card.faults.get(pathText(keys))}
  ></value-field>`;
}

/** What it was, where that differs; "" where it is the same. */
function wasText(card: Card, keys: Keys, leftKeys: Keys, kind: FieldKind, unit: string): string {
  const [mine, left] = [meant(card, keys), meant(card, leftKeys)];
  if (JSON.stringify(mine ?? null) === JSON.stringify(left ?? null)) return "";
  // a default of a part that is not there on the left is no change of its own
  if (left === undefined && getAt(card.job, keys) === undefined) return "";
  const text = shown(kind, left);
  return text === "" ? "not set" : `${text}${unit === "" ? "" : ` ${unit}`}`;
}

/** A blank with a few words to choose from. */
export function choose(
  card: Card,
  keys: Keys,
  label: string,
  choices: readonly Choice[],
  { leftKeys = null, quiet = false, wide = false }: { leftKeys?: Keys | null; quiet?: boolean; wide?: boolean } = {},
): TemplateResult {
  const value = choiceOf(choices, meant(card, keys));
  const left = leftKeys === null ? value : choiceOf(choices, meant(card, leftKeys));
  return html`<choice-field
    class="field ${wide ? "span" : ""}"
    .label=${label}
    .keys=${keys}
    .value=${value}
    .quiet=${quiet}
    .was=${left === value ? "" : (choices.find((each) => each.value === left)?.label ?? "not set")}
    .choices=${choices}
  ></choice-field>`;
}

const choiceOf = (choices: readonly Choice[], value: unknown): string =>
  choices.find((each) => ("stands" in each ? each.stands : each.value) === value)?.value ?? choices[0]?.value ?? "";

/** A fault of something larger than one blank. */
export function faultNote(card: Card, keys: Keys): TemplateResult | string {
  const fault = card.faults.get(pathText(keys));
  return fault === undefined ? "" : html`<p class="fault">${fault.given}: accepted is ${fault.accepted}.</p>`;
}
