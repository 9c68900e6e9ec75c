import { arrivalHour, harvest, newFound, newLedger, run, shine, type Ledger, type SetupPlan } from "../stay/index.ts";
import type { Study } from "../study.ts";
import { energyByLoad, partsOf, type EnergyByLoad } from "./byLoad.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { planStudy, type StudyPlan } from "./planStudy.ts";

/** One hour of the clock, meant over days: what comes in and what goes out [Wh]. */
export interface ClockHour {
  readonly in: {
    readonly sun_Wh: number;
    readonly road_Wh: number;
    readonly mains_Wh: number;
    /** what the array could have given and nothing took */
    readonly sunUnused_Wh: number;
  };
  /** what was served, by load as listed, then the inverter by itself where there is one in use */
  readonly out: readonly { readonly id: string; readonly name: string; readonly Wh: number }[];
}

/** A day of one setup's trip by the clock. */
export interface SetupDay {
  readonly id: string;
  readonly name: string;
  /** days that were meant over, 1 to the nights of the trip */
  readonly days: number;
  /** 24, from midnight */
  readonly hours: readonly ClockHour[];
}

/**
 * A day of each setup's trip by the clock, under the average sky: the mean of the whole days in which the loads were still
 * powered (of the first day where they drop within it), drives and mains included.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const dayOfIt = (study: Study): readonly SetupDay[] =>
  atOnce(dayOfItInParts(planStudy(study, study.trip.nights)));

/** The same of a study already planned, a setup a part. */
export function* dayOfItInParts({ stay, setups }: StudyPlan): InParts<readonly SetupDay[]> {
  const days: SetupDay[] = [];
  for (const setupPlan of setups) {
    shine(stay, stay.meanClearness); // again, since others may have put their sky there meanwhile
    harvest(setupPlan);
    days.push(dayOf(setupPlan));
    yield { progress: days.length / setups.length };
  }
  return days;
}

function dayOf(setupPlan: SetupPlan): SetupDay {
  const { travelled, setup } = setupPlan;
  const ledger = newLedger(travelled.hours);
  const { drop_h } = run(travelled, newFound(), { ledger });
  const powered_h = drop_h >= 0 ? drop_h : travelled.hours;
  const days = Math.max(1, Math.floor(powered_h / 24));
  const energy = energyByLoad(setupPlan, partsOf(setupPlan, true), ledger);
  return {
    id: setup.id,
    name: setup.name,
    days,
    hours: Array.from({ length: 24 }, (_, clock) => clockHour(ledger, energy, clock, days)),
  };
}

/** The mean of one hour of the clock over the first days. */
function clockHour(ledger: Ledger, { byLoad, inverterIdle_Wh }: EnergyByLoad, clock: number, days: number): ClockHour {
  const first = (clock - arrivalHour + 24) % 24;
  const mean = (series: Float64Array) => {
    let sum = 0;
    for (let day = 0; day < days; day++) sum += series[first + 24 * day]!;
    return sum / days;
  };
  const sun_Wh = mean(ledger.sunUsed_Wh);
  const out = byLoad.map(({ id, name, Wh }) => ({ id, name, Wh: mean(Wh) }));
  if (inverterIdle_Wh.some((Wh) => Wh > 0)) {
    out.push({ id: "inverter", name: "Inverter, by itself", Wh: mean(inverterIdle_Wh) });
  }
  return {
    in: {
      sun_Wh,
      road_Wh: mean(ledger.feed_Wh),
      mains_Wh: mean(ledger.mains_Wh),
      sunUnused_Wh: Math.max(0, mean(ledger.sunAvailable_Wh) - sun_Wh),
    },
    out,
  };
}
