import { prepareFeed } from "../feed/index.ts";
import { defaultHorizon_days } from "./explain.ts";
import { planSetup, planStay, type SetupPlan } from "../stay/index.ts";
import type { ConverterFeed, Feed, Setup, Study } from "../study.ts";
import { chargeAfter, hoursOf, refillCourse, type RefillHours } from "./refill.ts";
import { sayRefill } from "./refillSaid.ts";

/** What a drive puts back into a bank at its reserve, and what would put back more. */
export interface RefillAnswer {
  /** null where nothing feeds the bank */
  readonly now: RefillHours | null;
  /** shown charge after the trip's drive, and after one an hour longer; from the reserve */
  readonly drives: readonly { readonly hours: number; readonly charge: number }[];
  /** a converter of twice the amps, or a converter in a relay's place, on the same wire; null where nothing feeds it */
  readonly bigger: BiggerFeed | null;
  readonly said: readonly string[];
}

export interface BiggerFeed extends RefillHours {
  /** output amps of the converters together */
  readonly rated_A: number;
  readonly inPlaceOf: "relay" | "converter";
  /** shown charge after the trip's drive */
  readonly charge: number;
}

/** A drive where the trip has none [h] (chosen). */
const usualDrive_h = 2;

/** The converter tried in a relay's place: a usual one (chosen). */
const usualConverter = { rated_A: 40, efficiency: 0.9, minInputPer12_V: 11.5 } as const;

/**
 * What a longer drive or a bigger converter would change, sun left out.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function refillWith({ climate, trip }: Study, setup: Setup): RefillAnswer {
  const setupPlan = planSetup(planStay(climate, trip, defaultHorizon_days), setup);
  if (setup.feed === null || setupPlan.feed === null) {
    return { now: null, drives: [], bigger: null, said: ["Nothing charges the bank on the road."] };
  }
  const course = refillCourse(setupPlan, setupPlan.feed);
  const drive_h = trip.drives?.hours ?? usualDrive_h;
  const drives = [drive_h, drive_h + 1].map((hours) => ({ hours, charge: chargeAfter(course, hours) }));
  const now = hoursOf(course);
  const bigger = biggerOf(setupPlan, setup.feed, drive_h);
  return { now, drives, bigger, said: sayRefill(setupPlan.bank, now, drives, bigger) };
}

function biggerOf(setupPlan: SetupPlan, feed: Feed, drive_h: number): BiggerFeed {
  const tried = biggerFeed(feed, setupPlan.setup.bank.nominal_V);
  const course = refillCourse(setupPlan, prepareFeed(tried));
  return {
    ...hoursOf(course),
    rated_A: tried.rated_A * tried.count,
    inPlaceOf: feed.kind,
    charge: chargeAfter(course, drive_h),
  };
}

function biggerFeed(feed: Feed, nominal_V: number): ConverterFeed {
  if (feed.kind === "converter") return { ...feed, rated_A: 2 * feed.rated_A };
  const { rated_A, efficiency, minInputPer12_V } = usualConverter;
  const minInput_V = (minInputPer12_V * nominal_V) / 12;
  return { kind: "converter", rated_A, count: 1, efficiency, minInput_V, source: feed.source, path: feed.path };
}
