import type { StepEnd } from "./endStep.ts";
import type { Step } from "./step.ts";

/** Why sun was left unused, as the ledger codes it; 0 where none was. */
export const unusedCauses = ["none", "bank-full", "bank-limit", "too-cold", "loads-dropped"] as const;

const columns = [
  "powered_h",
  "served_Wh",
  "element_Wh",
  "sunAvailable_Wh",
  "sunUsed_Wh",
  "sunClipped_Wh",
  "feed_Wh",
  "mains_Wh",
  "bankIn_Wh",
  "bankOut_Wh",
  "chargeLoss_Wh",
  "stored_Ah",
  "drawn_Ah",
  "selfDischarge_Ah",
  "held_Ah",
  "volts_V",
  "unusedCause",
] as const;

/** The columns of a ledger; each name carries its unit. */
export type LedgerColumn = (typeof columns)[number];

/**
 * Every hour of one run, column by column. In each hour sun used + feed + mains + bank out = served + bank in, and
 * charge held changes by stored − drawn − self-discharge (where the bank is not already brim-full). `held_Ah` and
 * `volts_V` stand at the end of the hour; the rest are sums over it.
 */
export type Ledger = Readonly<Record<LedgerColumn, Float64Array>> & { readonly hours: number };

/**
 * An empty ledger.
 * @param hours how many, from arrival
 */
export function newLedger(hours: number): Ledger {
  const made = Object.fromEntries(columns.map((column) => [column, new Float64Array(hours)]));
  return { ...(made as Record<LedgerColumn, Float64Array>), hours };
}

/**
 * Adds one step to its hour. After a drop the step's sources stand idle: the sun of that part is unused.
 * @param cause index into `unusedCauses` for what the bank did not take
 */
export function noteStep(ledger: Ledger, h: number, step: Step, end: StepEnd, cause: number): void {
  const { step_h, lasted_h } = end;
  ledger.powered_h[h]! += end.powered ? lasted_h : 0;
  ledger.served_Wh[h]! += step.served_W * lasted_h;
  ledger.element_Wh[h]! += step.element_W * lasted_h;
  ledger.sunAvailable_Wh[h]! += step.sunAvailable_W * step_h;
  ledger.sunUsed_Wh[h]! += step.sunUsed_W * lasted_h;
  ledger.sunClipped_Wh[h]! += step.sunClipped_W * step_h;
  ledger.feed_Wh[h]! += step.feed_W * lasted_h;
  ledger.mains_Wh[h]! += step.mains_W * lasted_h;
  ledger.bankIn_Wh[h]! += step.bankIn_W * lasted_h;
  ledger.bankOut_Wh[h]! += step.bankOut_W * lasted_h;
  ledger.chargeLoss_Wh[h]! += step.chargeLoss_W * lasted_h;
  ledger.stored_Ah[h]! += step.stored_A * lasted_h;
  ledger.drawn_Ah[h]! += step.drawn_A * lasted_h;
  ledger.selfDischarge_Ah[h]! += end.selfDischarge_Ah;
  ledger.held_Ah[h] = end.held_Ah;
  ledger.volts_V[h] = end.volts_V;
  if (step.sunAvailable_W * step_h - step.sunUsed_W * lasted_h > 1e-6) ledger.unusedCause[h] = cause;
}
