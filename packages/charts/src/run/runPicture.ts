import type { ChargeMoment } from "@stayput/sim";
import { sayNumber, withUnit } from "../paper/words.ts";

/** A place on the way from the source to the bank, and the volts there while charging. */
export interface RunPlace {
  readonly label: string;
  readonly volts: number;
  /** what lies between the place before and this one: "6 m of 6 mm²" */
  readonly piece?: string | undefined;
}

/** Volts down the charge run, from the source to the bank. */
export interface RunPicture {
  readonly points: readonly RunPlace[];
  /** amps into the bank */
  readonly amps: number;
  /** what holds them back, in words: "the plug's pins, 15 A" */
  readonly limitedBy: string;
  /** volts the converter needs at its input */
  readonly minimum_V?: number | undefined;
}

/** One moment of a charge run: the places as the answer names them, and what holds the amps back with its number. */
export function runPictureOf(
  moment: ChargeMoment,
  { minimum_V, locale }: { readonly minimum_V?: number | undefined; readonly locale?: string | undefined } = {},
): RunPicture {
  const { name, value, unit } = moment.limit;
  return {
    points: moment.points.map((point) => ({ label: point.name, volts: point.volts_V })),
    amps: moment.delivered_A,
    limitedBy: `${name}, ${withUnit(sayNumber(value, locale, 1), unit)}`,
    minimum_V,
  };
}
