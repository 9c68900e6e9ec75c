import { DAYS_BEFORE, MONTH_DAYS } from "../numeric/calendar.ts";
import { mustAllLie, mustHold } from "../numeric/must.ts";
import { seriesDay } from "../numeric/solarClock.ts";
import type { Climate } from "../study.ts";
import { dailyExtraterrestrial_Wh_m2 } from "./extraterrestrial.ts";
import { SOLAR_CONSTANT_W_m2 } from "./solarConstant.ts";

/** Below this a month counts as polar night: its clearness says nothing [Wh/m²/day]. */
const POLAR_Wh_m2 = 50;

/** The twelve months' sun and clearness at one place. */
export interface MonthlyClearness {
  /** extraterrestrial irradiation of each day of the year, 365 values [Wh/m²] */
  readonly h0_Wh_m2: Float64Array;
  /** mean clearness of each month, 0.05 to 0.80, 12 values */
  readonly clearness: readonly number[];
  /** whether each month is in polar night, 12 values */
  readonly polar: readonly boolean[];
}

/**
 * Monthly mean clearness: H / mean of H0 over every day of the month, clamped to 0.05 to 0.80. A month in polar night (H0
 * under 50 Wh/m² a day) takes the mean of the lit months.
 * Source: Liu & Jordan (1960), Solar Energy 4(3):1; Duffie & Beckman, eq. 2.9.1. The polar rule is ours.
 *
 * @throws RangeError where the climate's latitude or irradiation is out of range
 */
export function monthlyClearness(
  climate: Pick<Climate, "latitude_deg" | "ghi_kWh_m2_day">,
  gsc_W_m2: number = SOLAR_CONSTANT_W_m2,
): MonthlyClearness {
  mustHold("ghi_kWh_m2_day", climate.ghi_kWh_m2_day, 12);
  mustAllLie("ghi_kWh_m2_day", climate.ghi_kWh_m2_day, 0, 15);
  const h0 = Float64Array.from({ length: 365 }, (_, i) =>
    dailyExtraterrestrial_Wh_m2(climate.latitude_deg, seriesDay(i + 1), gsc_W_m2),
  );
  const h0Mean = MONTH_DAYS.map((days, m) => monthSum(h0, m) / days);
  const polar = h0Mean.map((mean) => mean < POLAR_Wh_m2);
  const raw = h0Mean.map((mean, m) => clamp((1000 * (climate.ghi_kWh_m2_day[m] ?? NaN)) / mean));
  const lit = raw.filter((_, m) => polar[m] !== true);
  const litMean = lit.reduce((sum, k) => sum + k, 0) / lit.length;
  return { h0_Wh_m2: h0, clearness: raw.map((k, m) => (polar[m] === true ? litMean : k)), polar };
}

function monthSum(daily: Float64Array, month: number): number {
  let sum = 0;
  for (let i = DAYS_BEFORE[month] ?? 0; i < (DAYS_BEFORE[month + 1] ?? 0); i++) sum += daily[i] ?? NaN;
  return sum;
}

function clamp(clearness: number): number {
  return Math.min(0.8, Math.max(0.05, clearness));
}
