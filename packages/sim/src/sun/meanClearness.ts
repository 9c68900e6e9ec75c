import { DAYS_BEFORE, wrapDay } from "../numeric/calendar.ts";
import { monthLine, onMonthLine } from "../numeric/monthLine.ts";
import { mustBeWhole } from "../numeric/must.ts";
import { solveLinear } from "../numeric/solveLinear.ts";
import type { Climate } from "../study.ts";
import { clampMean } from "./bendt.ts";
import { monthlyClearness, type MonthlyClearness } from "./monthlyClearness.ts";
import { SOLAR_CONSTANT_W_m2 } from "./solarConstant.ts";

/**
 * Mean clearness of each day of a stretch of the year: straight lines between mid-month knots, the knots solved so that
 * each month keeps its own irradiation, Σ K(n) H0(n) = K̄ Σ H0(n). A month in polar night keeps its own value at its
 * middle. Then kept 0.01 inside the darkest and the clearest day (0.06 to 0.835), so that a distribution exists.
 * Source: ours. Lines straight through the monthly means err by -3 to +5 % of a month.
 *
 * @param firstDayOfYear 1 to 365 [day]
 * @param days how many; past 31 December the year begins again [day]
 * @param gsc_W_m2 solar constant [W/m²]
 * @returns `days` values
 * @throws RangeError where an argument is out of range
 */
export function meanClearnessByDay(
  climate: Climate,
  firstDayOfYear: number,
  days: number,
  gsc_W_m2: number = SOLAR_CONSTANT_W_m2,
): Float64Array {
  mustBeWhole("firstDayOfYear", firstDayOfYear, 1, 365);
  mustBeWhole("days", days, 0, 100_000);
  const knots = meanKeepingKnots(monthlyClearness(climate, gsc_W_m2));
  return Float64Array.from({ length: days }, (_, i) => clampMean(onMonthLine(knots, wrapDay(firstDayOfYear + i))));
}

function meanKeepingKnots(months: MonthlyClearness): number[] {
  const equations = months.clearness.map((clearness, month) => {
    if (months.polar[month] === true) return { row: unit(month), right: clearness };
    const row = knotWeights(months.h0_Wh_m2, month);
    return { row, right: clearness };
  });
  return solveLinear(
    equations.map(({ row }) => row),
    equations.map(({ right }) => right),
  );
}

/** How much each of the twelve knots counts in a month's irradiation; sums to 1. */
function knotWeights(h0: Float64Array, month: number): number[] {
  const row = new Array<number>(12).fill(0);
  let total = 0;
  for (let n = (DAYS_BEFORE[month] ?? 0) + 1; n <= (DAYS_BEFORE[month + 1] ?? 0); n++) {
    const { before, after, share } = monthLine(n);
    const weight = h0[n - 1] ?? NaN;
    row[before] = (row[before] ?? 0) + weight * (1 - share);
    row[after] = (row[after] ?? 0) + weight * share;
    total += weight;
  }
  return row.map((weight) => weight / total);
}

function unit(month: number): number[] {
  return Array.from({ length: 12 }, (_, i) => (i === month ? 1 : 0));
}
