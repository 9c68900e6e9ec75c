import type { JobInput } from "@stayput/job";
import { html, type TemplateResult } from "lit";
import { getAt, type Keys } from "../store/at.ts";
import type { BlankOptions, Card, choose } from "./card.ts";

export type SetupInput = JobInput["setups"][number];

/** The blanks of one setup, each told where the same blank stands in the setup on its left. */
export interface Column {
  readonly card: Card;
  readonly index: number;
  readonly setup: SetupInput;
  readonly host: HTMLElement;
  readonly blank: (keys: Keys, label: string, options?: BlankOptions) => TemplateResult;
  readonly choose: (keys: Keys, label: string, choices: Parameters<typeof choose>[3], wide?: boolean) => TemplateResult;
  readonly at: (keys: Keys) => Keys;
}

export const group = (title: string, body: unknown): TemplateResult =>
  html`<fieldset class="part">
    <legend>${title}</legend>
    ${body}
  </fieldset>`;

/** What a whole part was in the setup on the left; "" where its kind is the same. */
export function wasPart(card: Card, index: number, key: keyof SetupInput, say: (value: unknown) => string): string {
  if (index === 0) return "";
  const [mine, left] = [index, index - 1].map((i) => getAt(card.job, ["setups", i, key]));
  // a solar charger left out is assumed; anything else left out is not there
  const absent = (value: unknown) => (key === "solarCharger" ? String(value) : "none");
  const kind = (value: unknown) =>
    value === undefined || value === null ? absent(value) : ((value as { kind?: string }).kind ?? "one");
  return kind(mine) === kind(left) ? "" : say(left);
}
