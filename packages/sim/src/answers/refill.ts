import { bankModel, shownCharge } from "../bank/bankModel.ts";
import type { FeedCircuit } from "../feed/index.ts";
import { hourlyLoads, newFound, run, steadyFeed_A, together, type SetupPlan } from "../stay/index.ts";

/** Hours of driving, without sun, from the reserve to a shown charge; null where two days of driving do not reach it. */
export interface RefillHours {
  readonly to80: number | null;
  /** to 99 % shown: the last hundredth takes as long as one cares to wait */
  readonly toFull: number | null;
}

/** Hours of driving looked at, and the step that they are looked at by. */
const longest_h = 48;
const step_h = 0.1;

/** Charge counted as full. */
const full = 0.99;

/**
 * What the vehicle alone puts back: driving from the reserve on, the loads of a drive running, the sun left out.
 * Both null where nothing feeds the bank.
 */
export function refillHours(setupPlan: SetupPlan): RefillHours {
  return setupPlan.feed === null ? { to80: null, toFull: null } : hoursOf(refillCourse(setupPlan, setupPlan.feed));
}

/** Shown charge by tenths of an hour of driving, from the reserve on, through a feed. */
export function refillCourse({ plan, setup, demands, bank }: SetupPlan, feed: FeedCircuit): Float64Array {
  const hours = Math.min(longest_h, plan.hours);
  const held_Ah = new Float64Array(Math.round(hours / step_h) + 1);
  const ones = new Float64Array(hours).fill(1);
  const none = new Float64Array(hours);
  const driving = together(plan, demands, setup.inverter, "driving");
  const model = bankModel(setup.bank, bank.temp_C, step_h);
  const drive = {
    bank: model,
    hours,
    startCharge: Math.max(0, model.reserve_Ah / model.full_Ah),
    loads: driving,
    sun: none,
    sunTracks: true,
    sunMost_A: 0,
    kept: ones,
    mixed: {
      parked: none,
      driving: ones,
      mains: none,
      drivingLoads: driving,
      mainsLoads: hourlyLoads(hours),
      feed,
      steadyFeed_A: steadyFeed_A(model, feed),
      mainsMost_A: 0,
    },
  };
  run(drive, newFound(), { held_Ah });
  return held_Ah.map((held) => shownCharge(model, held));
}

export const hoursOf = (course: Float64Array): RefillHours => ({
  to80: firstReach_h(course, 0.8),
  toFull: firstReach_h(course, full),
});

/** Charge shown after so many hours; what lies past the end stands as at the end. */
export const chargeAfter = (course: Float64Array, hours: number): number =>
  course[Math.min(course.length - 1, Math.round(hours / step_h))]!;

function firstReach_h(course: Float64Array, level: number): number | null {
  const i = course.findIndex((value) => value >= level);
  if (i < 0) return null;
  if (i === 0) return 0;
  const before = course[i - 1]!;
  return (i - 1 + (level - before) / (course[i]! - before)) * step_h;
}
