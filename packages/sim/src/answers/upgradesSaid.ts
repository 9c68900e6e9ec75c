import type { GainShares, UpgradeChange, UpgradeMeasure } from "./upgradeTypes.ts";
import { capital, days as inDays, listed, outOf100 } from "./words.ts";

type Measures = Readonly<Record<UpgradeMeasure, GainShares>>;

/** Days, unless both setups outlast the horizon: then the dullest tenth's days; then the chance. */
export function measureOf({ days, dullDays }: Measures, horizon_days: number): UpgradeMeasure {
  if (!bothBeyond(days, horizon_days)) return "days";
  return bothBeyond(dullDays, horizon_days) ? "chance" : "dullDays";
}

const bothBeyond = ({ before, after }: GainShares, horizon_days: number): boolean =>
  before >= horizon_days && after >= horizon_days;

/** What each change does alone and together, and whose the gain is. */
export function sayUpgrades(changes: readonly UpgradeChange[], measures: Measures, horizon_days: number): string {
  if (changes.length === 0) return "The two setups do not differ.";
  const measure = measureOf(measures, horizon_days);
  if (measure === "chance" && measures.chance.before === measures.chance.after) {
    return `Both outlast ${inDays(horizon_days)} parked, and last on ${outOf100(measures.chance.after)} trips as described: what is worked out here does not tell them apart.`;
  }
  const shares = measures[measure];
  const value = (x: number): string => {
    if (measure === "chance") return `lasts on ${outOf100(x)} trips`;
    return x >= horizon_days ? `${inDays(horizon_days)} or more` : inDays(x);
  };
  const start = measure === "days" ? "" : `${beyond[measure](inDays(horizon_days))} `;
  if (changes.length === 1)
    return `${start}As it is: ${value(shares.before)}. ${capital(changes[0]!.text)}: ${value(shares.after)}.`;
  const each = changes.map(({ text }, i) => `${text} alone: ${value(shares.alone[i]!)}`).join("; ");
  return `${start}As it is: ${value(shares.before)}. ${capital(each)}. All together: ${value(shares.after)}.${owed(changes, shares, measure)}`;
}

const beyond: Readonly<Record<Exclude<UpgradeMeasure, "days">, (horizon: string) => string>> = {
  dullDays: (horizon) =>
    `On a middling trip both outlast ${horizon}; on the dullest tenth of trips they do not, and that is what is told here.`,
  chance: (horizon) =>
    `Parked, both outlast ${horizon} even on dull trips: days do not tell them apart, so the trip as described is told here.`,
};

/** Whose the gain is, where there is one and more than one change to share it. */
function owed(
  changes: readonly UpgradeChange[],
  { before, after, shares }: GainShares,
  measure: UpgradeMeasure,
): string {
  const gain = after - before;
  if (changes.length < 2 || gain < (measure === "chance" ? 0.015 : 0.05)) return "";
  const said = (x: number) => (measure === "chance" ? `${Math.round(x * 100)}` : x.toFixed(1));
  const worth = changes.map(({ id }, i) => [said(shares[i]!), owner[id]] as const);
  const [first, ...others] = worth.filter(([x]) => Number(x) !== 0);
  if (first === undefined) return ""; // each share too small to be told, though together they are not
  const parts = [`${first[0]} are owed to ${first[1]}`, ...others.map(([x, whom]) => `${x} to ${whom}`)];
  const unit = measure === "chance" ? "trips of 100" : "days";
  return ` Of the ${said(gain)} ${unit} gained, ${listed(parts)} (fair shares).`;
}

const owner: Readonly<Record<UpgradeChange["id"], string>> = {
  bank: "the bank",
  panels: "the panels",
  feed: "the road feed",
  inverter: "the inverter",
  mains: "the mains charger",
  loads: "what runs",
};
