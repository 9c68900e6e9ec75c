import type { ChargeBand, Days, ExplainAnswer } from "@stayput/sim";

/** One setup's charge over the stay. */
export interface ChargeSetup {
  readonly id: string;
  readonly name: string;
  /** shown charge, 0 to 1, hour by hour from arrival */
  readonly charge: ChargeBand;
  /** days until loads first drop under drawn skies */
  readonly days: { readonly p10: Days; readonly p50: Days; readonly p90: Days };
  /** charge one would rather not go under, 0 to 1; null draws none */
  readonly reserve: number | null;
  /** days from arrival to the food passing 5 °C; null where it does not, or is not known */
  readonly foodPasses5C_days: Days;
}

/** What the charge pictures are drawn from: up to six setups read well. */
export interface ChargePicture {
  readonly setups: readonly ChargeSetup[];
  /** nights to last */
  readonly nights: number;
  readonly horizon_days: number;
  /** clock hour of arrival; 15 when left out */
  readonly arrival_h?: number | undefined;
  /** clock hours of sunset and sunrise; null shades no night (midnight sun); 18 to 6 when left out */
  readonly dark?: { readonly from_h: number; readonly to_h: number } | null | undefined;
}

/** What a picture of charge may show beside the answer. */
export interface ChargeExtras {
  /** reserve of each setup by its id, 0 to 1 */
  readonly reserves?: Readonly<Record<string, number>> | undefined;
  readonly dark?: ChargePicture["dark"];
}

/**
 * The charge picture of an answer. The hour that food passes 5 °C is set after the median cut-off, by as many hours as the
 * answer gives for a cut-off (which it takes after the average sky's), so it is good to an hour or so.
 */
export function chargePictureOf(answer: ExplainAnswer, { reserves = {}, dark }: ChargeExtras = {}): ChargePicture {
  const setups = answer.setups.map(({ id, name, charge, days, food }) => ({
    id,
    name,
    charge,
    days: days.drawn,
    reserve: reserves[id] ?? null,
    foodPasses5C_days:
      days.drawn.p50 === null || food.hoursFromCutOffTo5C === null
        ? null
        : days.drawn.p50 + food.hoursFromCutOffTo5C / 24,
  }));
  return { setups, nights: answer.nights, horizon_days: answer.horizon_days, dark };
}
