import type { PairedGain } from "./compareTypes.ts";
import { days } from "./words.ts";

/** Less than this is no difference that anyone would notice [days]. */
const least = 0.05;

/**
 * A paired gain across the counter: "400 W lasts 2.1 days longer than As it came, never less than 0.8 days longer."
 * @param name of the setup
 * @param against name of the setup that it is held against
 */
export function sayGain(name: string, against: string, gain: PairedGain, horizon_days: number): string {
  const { p50_days, p10_days, p90_days, least_days, atLeast } = gain;
  const most = Math.max(Math.abs(p10_days), Math.abs(p90_days), Math.abs(least_days));
  if (most < least) return atLeast ? bothOutlast(name, against, horizon_days) : `${name} lasts as long as ${against}.`;
  const beyond = atLeast ? ` Where it outlasts ${days(horizon_days)}, the difference is larger still.` : "";
  return `${name} ${middle(p50_days, against)}${spread(gain)}.${beyond}`;
}

const bothOutlast = (name: string, against: string, horizon_days: number): string =>
  `${name} and ${against} both outlast ${days(horizon_days)}, or run down together: days do not tell them apart.`;

function middle(p50_days: number, against: string): string {
  if (Math.abs(p50_days) < least) return `mostly lasts as long as ${against}`;
  return `lasts ${days(Math.abs(p50_days))} ${p50_days > 0 ? "longer" : "less"} than ${against} on a middling trip`;
}

function spread({ p50_days, p90_days, least_days }: PairedGain): string {
  if (least_days <= -least) {
    if (p90_days <= -least) return `, and up to ${days(-least_days)} less`;
    return `, but up to ${days(-least_days)} less on some`;
  }
  if (Math.abs(p50_days) < least) return `, up to ${days(p90_days)} longer or more on one in ten`;
  return least_days < least ? ", never less" : `, never less than ${days(least_days)} longer`;
}
