import type { ChecklistRow, SafetyRow, StandardRow } from "@stayput/sim";
import { gathered, type Lettered, type Option } from "./options.ts";

const byId = <T extends { readonly id: string }>(
  options: readonly Option[],
  rowsOf: (wired: NonNullable<Option["wired"]>) => readonly T[],
): Lettered<T>[] =>
  gathered(
    options.flatMap(({ letter, wired }) => (wired === null ? [] : rowsOf(wired).map((row) => ({ letter, row })))),
    ({ id }) => id,
  );

/** What to pull while the loom is open, each once, with the letters of the options that call for it. */
export const loomRows = (options: readonly Option[]): Lettered<ChecklistRow>[] =>
  byId(options, ({ checklist }) => checklist);

/** Safety notes, each once. */
export const safetyRows = (options: readonly Option[]): Lettered<SafetyRow>[] => byId(options, ({ safety }) => safety);

export const standardRows = (options: readonly Option[]): readonly StandardRow[] =>
  options.find(({ wired }) => wired !== null)?.wired?.standards ?? [];

/** How far to trust each, numbered in the order in which they first stand, so that it is said once. */
export const standingsOf = (rows: readonly { readonly standing: string }[]): string[] => [
  ...new Set(rows.map(({ standing }) => standing)),
];
