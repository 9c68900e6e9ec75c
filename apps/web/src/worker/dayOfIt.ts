import type { DayHour, DayPicture } from "@stayput/charts";
import {
  arrivalHour,
  harvest,
  newFound,
  newLedger,
  planSetup,
  planStay,
  run,
  shine,
  type Ledger,
  type SetupPlan,
  type Study,
} from "@stayput/sim";

type Dark = DayPicture["dark"];

/**
 * A day of each setup's trip by the clock, under the average sky: the mean of the days in which the loads were still
 * powered, drives and mains included. What goes out in an hour is what was served, parted among the loads as they asked.
 */
export function daysOfIt(study: Study, dark: Dark): DayPicture[] {
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  const setupPlans = study.setups.map((setup) => planSetup(plan, setup));
  shine(plan, plan.meanClearness);
  return setupPlans.map((setupPlan) => dayOf(setupPlan, dark));
}

function dayOf(setupPlan: SetupPlan, dark: Dark): DayPicture {
  harvest(setupPlan);
  const { travelled } = setupPlan;
  const ledger = newLedger(travelled.hours);
  const { drop_h } = run(travelled, newFound(), { ledger });
  const powered_h = drop_h >= 0 ? Math.max(24, Math.floor(drop_h / 24) * 24) : travelled.hours;
  const hours = Math.min(powered_h, travelled.hours);
  return { dark, hours: Array.from({ length: 24 }, (_, clock) => hourOf(setupPlan, ledger, clock, hours)) };
}

/** The mean of one clock hour over the days counted. */
function hourOf(setupPlan: SetupPlan, ledger: Ledger, clock: number, hours: number): DayHour {
  const at: number[] = [];
  for (let i = (clock - arrivalHour + 24) % 24; i < hours; i += 24) at.push(i);
  const mean = (value: (i: number) => number) => at.reduce((sum, i) => sum + value(i), 0) / Math.max(1, at.length);
  return {
    in: {
      sun_Wh: mean((i) => ledger.sunUsed_Wh[i]!),
      road_Wh: mean((i) => ledger.feed_Wh[i]!),
      mains_Wh: mean((i) => ledger.mains_Wh[i]!),
      sunUnused_Wh: mean((i) => Math.max(0, ledger.sunAvailable_Wh[i]! - ledger.sunUsed_Wh[i]!)),
    },
    out: outOf(setupPlan, ledger, mean),
  };
}

function outOf(
  { plan, demands, camped }: SetupPlan,
  ledger: Ledger,
  mean: (value: (i: number) => number) => number,
): DayHour["out"] {
  const idle = camped.idle_W;
  const rows = demands.map((demand) => ({
    id: demand.load.id,
    name: demand.load.name,
    asked: (i: number) => {
      const driving = plan.parts.driving[i]!;
      const parked = demand.camped_W[i]! + (demand.campedElement_W?.[i] ?? 0);
      return parked * (1 - driving) + (demand.driving_W[i]! + (demand.drivingElement_W?.[i] ?? 0)) * driving;
    },
  }));
  if (idle !== null) rows.push({ id: "inverter", name: "Inverter, by itself", asked: (i) => idle[i]! });
  const total = (i: number) => rows.reduce((sum, row) => sum + row.asked(i), 0);
  const served = (i: number) => ledger.served_Wh[i]! + ledger.element_Wh[i]!;
  return rows.map(({ id, name, asked }) => ({
    id,
    name,
    Wh: mean((i) => (total(i) > 0 ? (served(i) * asked(i)) / total(i) : 0)),
  }));
}
