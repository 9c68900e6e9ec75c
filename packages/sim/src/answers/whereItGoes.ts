import { unusedCauses, type Ledger, type LoadDemand, type SetupPlan } from "../stay/index.ts";
import type { LoadUse, SetupAnswer, UnusedCause } from "./types.ts";

/** Hours that daily means are taken over: the nights of the trip, parked, average sky. */
const tripHours = ({ plan }: SetupPlan): number => plan.trip.nights * 24;

const sumOver = (series: Float64Array, hours: number): number => {
  let sum = 0;
  for (let i = 0; i < hours; i++) sum += series[i]!;
  return sum;
};

/**
 * Watt-hours a day that each load asks of the bank, its running losses in the inverter included; the inverter's idle draw
 * goes to the ac loads that keep it on, hour by hour, or stands as its own row where none does.
 */
export function useOf(setupPlan: SetupPlan, ledger: Ledger): SetupAnswer["use_Wh_day"] {
  const hours = tripHours(setupPlan);
  const perDay = 24 / hours;
  const warmth = elementRatio(setupPlan, ledger);
  const { shares, alone_Wh } = idleByLoad(setupPlan, hours);
  const rows = setupPlan.demands.map((demand, i) => {
    const element = demand.campedElement_W === null ? 0 : sumOver(demand.campedElement_W, hours) * warmth;
    const { id, name } = demand.load;
    return { id, name, Wh_day: (sumOver(demand.camped_W, hours) + element + shares[i]!) * perDay };
  });
  if (alone_Wh > 0) rows.push({ id: "inverter", name: "Inverter, standing by", Wh_day: alone_Wh * perDay });
  const total = rows.reduce((sum, row) => sum + row.Wh_day, 0);
  const byLoad: LoadUse[] = rows.map((row) => ({ ...row, share: total > 0 ? row.Wh_day / total : 0 }));
  return { total, byLoad: byLoad.sort((a, b) => b.Wh_day - a.Wh_day) };
}

/** A heating element takes more at higher volts: its mean watts over nominal, in the hours that it was powered. */
function elementRatio({ camped }: SetupPlan, ledger: Ledger): number {
  let nominal_Wh = 0;
  let actual_Wh = 0;
  for (let i = 0; i < ledger.hours; i++) {
    nominal_Wh += camped.element_W[i]! * ledger.powered_h[i]!;
    actual_Wh += ledger.element_Wh[i]!;
  }
  return nominal_Wh > 0 ? actual_Wh / nominal_Wh : 1;
}

function idleByLoad({ demands, camped }: SetupPlan, hours: number): { shares: number[]; alone_Wh: number } {
  const shares = demands.map(() => 0);
  let alone_Wh = 0;
  if (camped.idle_W === null) return { shares, alone_Wh };
  const uses = (demand: LoadDemand, i: number) => demand.needsInverter !== null && demand.camped_W[i]! > 0;
  for (let i = 0; i < hours; i++) {
    const users = demands.filter((demand) => uses(demand, i)).length;
    if (users === 0) alone_Wh += camped.idle_W[i]!;
    else demands.forEach((demand, d) => (shares[d]! += uses(demand, i) ? camped.idle_W![i]! / users : 0));
  }
  return { shares, alone_Wh };
}

/** Sun by day: what array and charger could deliver, what loads and bank took, and why the rest was left. */
export function sunOf(setupPlan: SetupPlan, ledger: Ledger): SetupAnswer["sun_Wh_day"] {
  const hours = tripHours(setupPlan);
  const perDay = 24 / hours;
  const available = sumOver(ledger.sunAvailable_Wh, hours) * perDay;
  const used = sumOver(ledger.sunUsed_Wh, hours) * perDay;
  const byCause = unusedCauses.map(() => 0);
  for (let i = 0; i < hours; i++) {
    byCause[ledger.unusedCause[i]!]! += (ledger.sunAvailable_Wh[i]! - ledger.sunUsed_Wh[i]!) * perDay;
  }
  const unusedWhy = unusedCauses.flatMap((cause, code) =>
    cause !== "none" && byCause[code]! > 0.05 ? [{ cause: cause satisfies UnusedCause, Wh_day: byCause[code]! }] : [],
  );
  const clipped = sumOver(ledger.sunClipped_Wh, hours) * perDay;
  return { available, used, unused: Math.max(0, available - used), unusedWhy, overCharger: clipped };
}

/** Losses inside the use, and in the bank. */
export function lossesOf(setupPlan: SetupPlan, ledger: Ledger): SetupAnswer["losses_Wh_day"] {
  const hours = tripHours(setupPlan);
  const perDay = 24 / hours;
  const running = setupPlan.demands.map(({ campedLoss_W }) =>
    campedLoss_W === null ? 0 : sumOver(campedLoss_W, hours),
  );
  const idle = setupPlan.camped.idle_W === null ? 0 : sumOver(setupPlan.camped.idle_W, hours);
  let selfDischarge_Wh = 0;
  for (let i = 0; i < hours; i++) selfDischarge_Wh += ledger.selfDischarge_Ah[i]! * ledger.volts_V[i]!;
  return {
    inverter: (running.reduce((sum, Wh) => sum + Wh, 0) + idle) * perDay,
    charging: sumOver(ledger.chargeLoss_Wh, hours) * perDay,
    selfDischarge: selfDischarge_Wh * perDay,
  };
}
