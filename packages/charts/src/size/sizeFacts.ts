import type { SizePoint } from "@stayput/sim";
import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayNumber, sayPercent, withUnit } from "../paper/words.ts";
import type { SizePicture } from "./sizePicture.ts";

const chemistryNames = { agm: "AGM", gel: "Gel", flooded: "Flooded", lfp: "LiFePO₄" } as const;

function sayPrice(price: number | null, { currency }: SizePicture, locale = "en"): string {
  if (price === null) return "–";
  return currency
    ? new Intl.NumberFormat(locale, { style: "currency", currency, maximumFractionDigits: 0 }).format(price)
    : sayNumber(price, locale);
}

const sayMass = (mass_kg: number | null, locale?: string): string =>
  mass_kg === null ? "–" : withUnit(sayNumber(mass_kg, locale, 1), "kg");

const saySizes = (point: SizePoint, locale?: string): string =>
  `${withUnit(sayNumber(point.bank_Ah, locale), "Ah")} ${chemistryNames[point.chemistry]} with ${withUnit(sayNumber(point.array_W, locale), "W")}`;

/** A point in one line, for its name to a screen reader. */
export function sayPoint(point: SizePoint, picture: SizePicture, locale?: string): string {
  const more = [
    point.price === null ? [] : [sayPrice(point.price, picture, locale)],
    point.mass_kg === null ? [] : [sayMass(point.mass_kg, locale)],
  ].flat();
  return [`${saySizes(point, locale)}: chance ${sayPercent(point.chance, locale)}`, ...more].join(", ");
}

/** One row a size found. The contours are the same chances over the whole ladder: `sizeLadderTable` lists those. */
export function sizeTable(picture: SizePicture, { locale }: FactOptions = {}): ChartTable {
  const { nights, chance } = picture.asked;
  return {
    caption: `What size: banks and arrays that last ${nights} ${nights === 1 ? "night" : "nights"} with a chance of ${sayPercent(chance, locale)}`,
    columns: ["Bank", "Array", "Chemistry", "Chance", "Price", "Mass"],
    rows: picture.points.map((point) => [
      withUnit(sayNumber(point.bank_Ah, locale), "Ah"),
      withUnit(sayNumber(point.array_W, locale), "W"),
      chemistryNames[point.chemistry],
      sayPercent(point.chance, locale),
      sayPrice(point.price, picture, locale),
      sayMass(point.mass_kg, locale),
    ]),
  };
}

/** The chance of lasting at every rung of the two ladders. */
export function sizeLadderTable({ grid }: SizePicture, { locale }: FactOptions = {}): ChartTable {
  return {
    caption: "The chance of lasting by bank and array",
    columns: ["Bank", ...(grid?.arrays_W ?? []).map((W) => withUnit(sayNumber(W, locale), "W"))],
    rows: (grid?.banks_Ah ?? []).map((Ah, b) => [
      withUnit(sayNumber(Ah, locale), "Ah"),
      ...(grid?.chance[b] ?? []).map((chance) => sayPercent(chance, locale)),
    ]),
  };
}

/** The cheapest point, or the lightest bank where prices are not known. */
function bestOf(points: readonly SizePoint[]): SizePoint | undefined {
  const cost = (point: SizePoint) => point.price ?? Infinity;
  return [...points].sort((a, b) => cost(a) - cost(b) || a.bank_Ah - b.bank_Ah)[0];
}

/** The sizes in a sentence: how many do it, and the cheapest of them, or the one with the smallest bank. */
export function sizeSummary(picture: SizePicture, { locale }: FactOptions = {}): string {
  const { points, asked } = picture;
  const best = bestOf(points);
  const goal = `${asked.nights} ${asked.nights === 1 ? "night" : "nights"} with a chance of ${sayPercent(asked.chance, locale)}`;
  if (!best) return `What size: nothing found yet that lasts ${goal}.`;
  const first = best.price === null ? "the smallest bank is" : "the cheapest is";
  return `What size: ${points.length} ${points.length === 1 ? "size lasts" : "sizes last"} ${goal}; ${first} ${sayPoint(best, picture, locale)}.`;
}

/** One size found. */
export function sizeReadout(picture: SizePicture, index: number, { locale }: FactOptions = {}): Readout {
  const point = picture.points[index];
  if (!point) return { heading: "", lines: [] };
  return {
    heading: saySizes(point, locale),
    lines: [
      { name: "Chance of lasting", value: sayPercent(point.chance, locale) },
      ...(point.price === null ? [] : [{ name: "Price", value: sayPrice(point.price, picture, locale) }]),
      ...(point.mass_kg === null ? [] : [{ name: "Mass", value: sayMass(point.mass_kg, locale) }]),
    ],
  };
}
