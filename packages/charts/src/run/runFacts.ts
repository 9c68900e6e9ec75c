import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayFixed, sayNumber, saySigned, withUnit } from "../paper/words.ts";
import type { RunPicture } from "./runPicture.ts";

const volts = (value: number, { locale, format }: FactOptions): string =>
  format ? format(value) : withUnit(sayFixed(value, locale, 2), "V");

function drop(picture: RunPicture, i: number, { locale }: FactOptions): string {
  const [before, here] = [picture.points[i - 1], picture.points[i]];
  if (!before || !here) return "–";
  return withUnit(saySigned(Math.round((here.volts - before.volts) * 100) / 100, locale, 2), "V");
}

/** The charge run place by place. */
export function runTable(picture: RunPicture, options: FactOptions = {}): ChartTable {
  const through = picture.points.some(({ piece }) => piece !== undefined);
  return {
    caption: `Charge run: ${withUnit(sayNumber(picture.amps, options.locale, 1), "A")} into the bank, held back by ${picture.limitedBy}`,
    columns: ["Place", ...(through ? ["Through"] : []), "Volts", "Drop"],
    rows: picture.points.map((point, i) => [
      point.label,
      ...(through ? [point.piece ?? "–"] : []),
      volts(point.volts, options),
      drop(picture, i, options),
    ]),
  };
}

/** The charge run in a sentence: volts at both ends, amps, and what holds them back. */
export function runSummary(picture: RunPicture, options: FactOptions = {}): string {
  const [first, last] = [picture.points[0], picture.points.at(-1)];
  if (!first || !last) return "Charge run: none yet.";
  const needs = picture.minimum_V === undefined ? "" : `; the converter needs ${volts(picture.minimum_V, options)}`;
  return `Charge run: ${volts(first.volts, options)} at ${first.label}, ${volts(last.volts, options)} at ${last.label}, ${withUnit(sayNumber(picture.amps, options.locale, 1), "A")} into the bank, held back by ${picture.limitedBy}${needs}.`;
}

/** Volts at one place, and what was lost on the way from the place before. */
export function runReadout(picture: RunPicture, index: number, options: FactOptions = {}): Readout {
  const point = picture.points[index];
  if (!point) return { heading: "", lines: [] };
  const lost =
    index === 0 ? [] : [{ name: point.piece ?? "From the place before", value: drop(picture, index, options) }];
  return { heading: point.label, lines: [{ name: "Volts", value: volts(point.volts, options) }, ...lost] };
}
