import { chemistries } from "../bank/chemistries.ts";
import { pointAt, type Place } from "./sizeChoice.ts";
import { worstOf, type Pair } from "./sizeLadder.ts";
import type { SizeRequest, SizeStep } from "./sizeTypes.ts";
import type { SizePoint } from "./types.ts";
import { counted, monthName, outOf100 } from "./words.ts";

/** "200 Ah of AGM with 300 W of panels". */
export const named = ({ bank_Ah, array_W, chemistry }: Pair): string =>
  `${bank_Ah} Ah of ${chemistries[chemistry].name} with ${array_W > 0 ? `${array_W} W of panels` : "no panels"}`;

/** "14 nights on 90 of 100 trips". */
export const asked = ({ nights, chance }: SizeRequest): string =>
  `${counted(nights, "night")} on ${Math.round(chance * 1000) / 10} of 100 trips`;

/** "in June", "even in July, the worst of the months asked". */
export const inMonth = (month: number, { months }: SizeRequest): string =>
  months.length > 1 ? `even in ${monthName(month)}, the worst of the months asked` : `in ${monthName(month)}`;

export function reasonForPick(request: SizeRequest, place: Place, fitting: number, nominal_V: number): string {
  const pick = pointAt(place);
  const { month } = worstOf(place.ladder, place.b, place.a);
  const volts = nominal_V === 12 ? "" : ` (at ${nominal_V} V)`;
  return (
    `${named(pick)}${volts} lasts ${counted(request.nights, "night")} on ${outOf100(pick.chance)} trips ` +
    `${inMonth(month, request)} (${Math.round(request.chance * 1000) / 10} asked). ${whyThatOne(pick, fitting)}`
  );
}

function whyThatOne({ price, mass_kg }: SizePoint, fitting: number): string {
  if (fitting === 1) return "No smaller pair does it.";
  const others = `the ${fitting} smallest pairs that do it`;
  if (price !== null) return `It is the cheapest of ${others}.`;
  if (mass_kg !== null) return `It is the lightest of ${others}; what they cost is not known for every one.`;
  return `It has the smallest bank of ${others}; neither prices nor masses are all known.`;
}

const steps: Readonly<Record<SizeStep["change"], string>> = {
  "smaller-bank": "The next smaller bank",
  "larger-bank": "The next larger bank",
  "smaller-array": "The next smaller array",
  "larger-array": "The next larger array",
};

export function saidOfStep(change: SizeStep["change"], point: SizePoint, pick: SizePoint): string {
  const what = change.endsWith("bank") ? `${point.bank_Ah} Ah` : `${point.array_W} W`;
  const chance =
    point.chance === pick.chance
      ? `lasts on the same ${outOf100(point.chance)} trips`
      : `lasts on ${outOf100(point.chance)} trips instead of ${Math.round(pick.chance * 100)}`;
  return `${steps[change]}, ${what}: ${chance}${priceOfStep(point, pick)}.`;
}

function priceOfStep(point: SizePoint, pick: SizePoint): string {
  if (point.price === null || pick.price === null || point.price === pick.price) return "";
  const by = Math.round(Math.abs(point.price - pick.price)).toLocaleString("en-GB");
  return point.price < pick.price ? `, for ${by} less` : `, for ${by} more`;
}
