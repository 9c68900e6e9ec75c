import type { Inverter } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { requireAbove } from "./require.ts";

/** Share of the load, and of the load's square over the rating, that is lost. */
export interface InverterCoefficients {
  readonly a: number;
  readonly b: number;
}

/** Chosen: gives 0.90 to 0.92 from a fifth of the rating up, as touring inverters are sold; no source. */
const UNSAID: InverterCoefficients = { a: 0.05, b: 0.05 };

/**
 * The loss coefficients of P_dc = P_ac + idle + a P_ac + b P_ac²/P_rated (form: Schmidt & Sauer 1996). Without a peak
 * efficiency, 0.05 each. With one, a = b = x from the load where efficiency peaks, P_ac = P_rated √(p/x), p = idle/P_rated:
 * there x + 2 √(p x) = 1/peak − 1. Where that load would lie above the rating (p > x) efficiency peaks at the rating
 * itself, and p + 2 x = 1/peak − 1.
 *
 * @throws RangeError where the idle draw alone, at the rated load, already loses more than the peak efficiency allows
 */
export function inverterCoefficients(inverter: Inverter): InverterCoefficients {
  requireAbove("inverter.rated_W", inverter.rated_W, 0);
  mustLie("inverter.idle_W", inverter.idle_W, 0, inverter.rated_W);
  if (inverter.peakEfficiency === null) return UNSAID;
  mustLie("inverter.peakEfficiency", inverter.peakEfficiency, 0.3, 1);
  const x = equalCoefficient(1 / inverter.peakEfficiency - 1, inverter.idle_W / inverter.rated_W);
  if (!(x >= 0)) throw new RangeError(unreachable(inverter));
  return { a: x, b: x };
}

function equalCoefficient(lossPerWatt: number, idleShare: number): number {
  const x = (Math.sqrt(idleShare + lossPerWatt) - Math.sqrt(idleShare)) ** 2;
  return idleShare <= x ? x : (lossPerWatt - idleShare) / 2;
}

function unreachable({ peakEfficiency, idle_W, rated_W }: Inverter): string {
  const most = rated_W / (rated_W + idle_W);
  return `inverter.peakEfficiency must be at most ${most} with an idle draw of ${idle_W} W in ${rated_W} W, got ${peakEfficiency}`;
}

/**
 * What an inverter loses beyond its idle draw while it carries a load [W]: a P + b P²/P_rated. The idle draw is for the
 * stay to add, for every whole hour with any ac use. Above the rating the equation is carried on; the overload is for the
 * peaks to report.
 *
 * @param running_W the load while it runs, not its mean over the hour [W], 0 or more
 */
export function inverterRunningLoss_W(inverter: Inverter, running_W: number): number {
  mustLie("running_W", running_W, 0, 1e9); // more than all that a job may list
  const { a, b } = inverterCoefficients(inverter);
  return a * running_W + (b * running_W ** 2) / inverter.rated_W;
}
