import type { YearAnswer } from "@stayput/sim";

/** The same trip begun in each month, all setups. */
export interface YearPicture {
  readonly setups: YearAnswer["setups"];
  readonly horizon_days: number;
  /** nights asked, ruled in; null or left out rules none */
  readonly nights?: number | null | undefined;
  /** month of the trip in hand, 1 to 12, shaded */
  readonly month?: number | null | undefined;
}

/**
 * The picture of a year, from sim's answer.
 * @param horizon_days how far the answer looked
 */
export const yearPictureOf = (
  answer: YearAnswer,
  horizon_days: number,
  trip: { readonly nights?: number; readonly month?: number } = {},
): YearPicture => ({ setups: answer.setups, horizon_days, ...trip });
