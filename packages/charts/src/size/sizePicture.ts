import type { SizeAnswer, SizeGrid, SizePoint } from "@stayput/sim";

/** Bank against array: the chance of lasting, the sizes found, and the setups in hand. */
export interface SizePicture {
  /** null while the search has not got so far: the points and setups are drawn alone */
  readonly grid: SizeGrid | null;
  /** the sizes that meet what was asked, each to be chosen */
  readonly points: readonly SizePoint[];
  readonly setups: readonly {
    readonly id: string;
    readonly name: string;
    readonly bank_Ah: number;
    readonly array_W: number;
  }[];
  readonly asked: { readonly nights: number; readonly chance: number };
  /** currency code of the points' prices, ISO 4217; left out, prices are plain numbers */
  readonly currency?: string | undefined;
}

/** A size answer with the corners of every staircase as the points to choose from. */
export const sizePictureOf = (
  answer: SizeAnswer,
  grid: SizeGrid | null,
  setups: SizePicture["setups"],
  currency?: string,
): SizePicture => ({
  grid,
  points: answer.staircases.flatMap(({ corners }) => corners),
  setups,
  asked: { nights: answer.nights, chance: answer.chance },
  currency,
});
