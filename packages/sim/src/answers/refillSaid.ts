import type { BankModel } from "../bank/bankModel.ts";
import type { RefillHours } from "./refill.ts";
import type { RefillAnswer } from "./refillWith.ts";
import { counted } from "./words.ts";

type Drives = RefillAnswer["drives"];
type Bigger = NonNullable<RefillAnswer["bigger"]>;

/** What a bigger charger saves an AGM lies within this [h]: minutes, not hours. */
const little_h = 0.75;

export function sayRefill(bank: BankModel, now: RefillHours, drives: Drives, bigger: Bigger): string[] {
  return [nowSaid(bank, now), ...longerSaid(drives), biggerSaid(bank, now, drives, bigger)];
}

function nowSaid({ reserve }: BankModel, { to80, toFull }: RefillHours): string {
  const from = `From the reserve (${percent(reserve)}), without sun,`;
  if (to80 === null) return `${from} two days of driving do not bring the bank to 80 %.`;
  const full = toFull === null ? "two days of driving do not fill it" : `${hours(toFull)} to full`;
  return `${from} ${hours(to80)} of driving bring the bank to 80 %; ${full}.`;
}

function longerSaid([usual, longer]: Drives): string[] {
  if (usual === undefined || longer === undefined) return [];
  const more = Math.round((longer.charge - usual.charge) * 100);
  const then = more < 1 ? "an hour longer adds nothing to speak of" : `one an hour longer at ${percent(longer.charge)}`;
  return [`A drive of ${hours(usual.hours)} ends at ${percent(usual.charge)}; ${then}.`];
}

function biggerSaid(bank: BankModel, now: RefillHours, drives: Drives, bigger: Bigger): string {
  const { rated_A, inPlaceOf, charge } = bigger;
  const what = inPlaceOf === "relay" ? `a ${rated_A} A converter for the relay` : `${rated_A} A for ${rated_A / 2} A`;
  const start = `With ${what}, on the same wire, that drive`;
  const more = Math.round((charge - (drives[0]?.charge ?? 0)) * 100);
  const saved_h = now.toFull === null || bigger.toFull === null ? null : now.toFull - bigger.toFull;
  if (more === 0 && saved_h !== null && Math.abs(saved_h) < 1 / 60) {
    return `${start} ends the same: the converter is not what holds the charge back.`;
  }
  const ends = more === 0 ? "ends the same" : `ends at ${percent(charge)}`;
  return `${start} ${ends}${fullSaid(bank, saved_h, bigger.toFull)}.`;
}

function fullSaid(bank: BankModel, saved_h: number | null, toFull: number | null): string {
  if (saved_h === null) return toFull === null ? "" : `, and full is reached in ${hours(toFull)}`;
  if (saved_h < 0) return `, and full comes ${hours(-saved_h)} later`;
  const pace = saved_h < little_h && bank.taper_per_h > 0;
  const why = pace ? " only: near full, a lead-acid bank takes charge at its own pace" : "";
  return `, and full comes ${hours(saved_h)} sooner${why}`;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const minutes = (time_h: number): string => counted(Math.round(time_h * 60), "minute");

/** To half an hour, and to a minute below an hour and a half. */
function hours(time_h: number): string {
  if (time_h < 1.5) return minutes(time_h);
  const half = Math.round(time_h * 2) / 2;
  return `${half} hours`;
}
