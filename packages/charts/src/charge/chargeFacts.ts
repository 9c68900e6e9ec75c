import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayDays, sayDaysShort, sayMoment, sayPercent, sayRange } from "../paper/words.ts";
import type { ChargePicture, ChargeSetup } from "./chargePicture.ts";
import { chargeAt, chargeSpan_days } from "./chargeScale.ts";

const moment = (days: number | null, arrival_h: number | undefined, never: string): string =>
  days === null ? never : sayMoment(days, arrival_h);

const percentAt = (series: readonly number[], days: number, locale: string | undefined): string => {
  const share = chargeAt(series, days);
  return share === null ? "–" : sayPercent(share, locale);
};

/** One row a setup: the days, the moments, the reserve, and the charge at the end of each day drawn. */
export function chargeTable(picture: ChargePicture, { locale }: FactOptions = {}): ChartTable {
  const days = Array.from({ length: Math.min(chargeSpan_days(picture), 14) }, (_, i) => i + 1);
  return {
    caption: "How long it lasts: days from arrival until the loads drop, and the median charge each day on",
    columns: [
      "Setup",
      "Days, P10",
      "Days, median",
      "Days, P90",
      "Flat",
      "Food past 5 °C",
      "Reserve",
      ...days.map((day) => `Charge after ${day} d`),
    ],
    rows: picture.setups.map((setup) => [
      setup.name,
      ...[setup.days.p10, setup.days.p50, setup.days.p90].map((d) => sayDaysShort(d, picture.horizon_days, locale)),
      moment(setup.days.p50, picture.arrival_h, "not within the horizon"),
      moment(setup.foodPasses5C_days, picture.arrival_h, "–"),
      setup.reserve === null ? "–" : sayPercent(setup.reserve, locale),
      ...days.map((day) => percentAt(setup.charge.p50, day, locale)),
    ]),
  };
}

function sentence(setup: ChargeSetup, { horizon_days, arrival_h }: ChargePicture, locale: string | undefined): string {
  const { p10, p50, p90 } = setup.days;
  const lasts = `${setup.name} lasts ${sayDays(p50, horizon_days, locale)}`;
  const between = sayRange(p10, p90, horizon_days, locale);
  const range = between === sayDays(p50, horizon_days, locale) ? "" : ` (${between})`;
  return `${lasts}${range}${p50 === null ? "" : `, flat ${sayMoment(p50, arrival_h)}`}`;
}

/** One sentence for a screen reader. */
export function chargeSummary(picture: ChargePicture, { locale }: FactOptions = {}): string {
  if (picture.setups.length === 0) return "How long it lasts: no setup yet.";
  return `How long it lasts: ${picture.setups.map((setup) => sentence(setup, picture, locale)).join("; ")}.`;
}

/** Each setup's charge at so many days from arrival. */
export function chargeReadout(picture: ChargePicture, days: number, { locale }: FactOptions = {}): Readout {
  return {
    heading: sayMoment(days, picture.arrival_h),
    lines: picture.setups.map(({ name, charge }) => ({
      name,
      value: `${percentAt(charge.p50, days, locale)} (${percentAt(charge.p10, days, locale)} to ${percentAt(charge.p90, days, locale)})`,
    })),
  };
}
