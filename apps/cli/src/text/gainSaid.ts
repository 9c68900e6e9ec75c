import type { ComparedSetup, PairedGain } from "@stayput/sim";
import { daysMore, thousands } from "./numbers.ts";
import { plain } from "./plain.ts";

const LEAST = 0.05; // days: less is told as none

/** What a setup adds to the first one, sky by sky, so that luck drops out, and what it costs. */
export function gainSaid(setup: ComparedSetup, first: string, horizon_days: number, currency: string | null): string {
  const unit = currency === null ? "" : `${currency} `;
  const price = setup.price > 0 ? ` Price: ${unit}${thousands(setup.price)}.` : "";
  const gain = setup.gain === null ? "" : `: ${worth(setup.gain, first, horizon_days)}`;
  return `${plain(setup.name, 50)}${gain}.${price}`;
}

function worth({ p50_days, p90_days, least_days, atLeast }: PairedGain, first: string, horizon_days: number): string {
  const [least, middle, most] = [least_days, p50_days, p90_days].map(daysMore);
  if (least === "0.0" && most === "0.0") return alike(first, horizon_days, atLeast);
  if (p50_days <= -LEAST) return `${daysMore(-p50_days)} days less than ${first}, under the middle sky`;
  const sure =
    least_days <= -LEAST ? `though ${daysMore(-least_days)} fewer under one sky` : `never fewer than ${least}`;
  const beyond = atLeast ? `; more still where it outlasts the ${Math.floor(horizon_days)} days looked at` : "";
  return `${middle} days more than ${first} under the middle sky, ${sure}${beyond}`;
}

/** Two that outlast the days looked at may differ beyond them. */
const alike = (first: string, horizon_days: number, atLeast: boolean): string =>
  atLeast
    ? `no different from ${first} in the ${Math.floor(horizon_days)} days looked at; beyond them it may be`
    : `no longer than ${first} under any sky`;
