import { count } from "./numbers.ts";
import { plain } from "./plain.ts";
import { wrap } from "./wrap.ts";

/** What an answer is of. Names are as in the job; the text makes them fit for a terminal. */
export interface Of {
  readonly title: string;
  readonly customer: string | null;
  /** "Upington (28.4° S, 21.3° E)" */
  readonly place: string;
  /** day of arrival in words, "10 July" */
  readonly arrive: string;
}

/** The first paragraph of every answer. */
export function titled({ title, customer, place, arrive }: Of, nights: number, more = ""): string[] {
  const whose = customer === null ? "" : `, for ${plain(customer, 60)}`;
  return wrap(`${plain(title, 120)}${whose}. ${plain(place, 80)}, ${count(nights, "night")} from ${arrive}.${more}`);
}

interface Drawn {
  /** null where the skies were given */
  readonly seed: number | null;
  readonly draws: number;
  readonly horizon_days: number;
}

/** The last words of every answer that rests on skies. */
export function standing({ seed, draws, horizon_days }: Drawn): string {
  const from =
    seed === null
      ? `${count(draws, "sky", "skies")} from the file`
      : `${count(draws, "drawn sky", "drawn skies")}, seed ${seed}`;
  const meaning =
    "Flat is when the loads drop, the reserve is the charge one would rather not go under, and P10, P50 and P90 are the days by which a tenth, half and nine tenths of the skies have it flat";
  return `Estimate for planning, not a promise: ${from}, up to ${count(Math.floor(horizon_days), "day")}. ${meaning}.`;
}
