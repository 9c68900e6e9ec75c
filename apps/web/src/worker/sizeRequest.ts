import { sizeRequest as requestOf, type SizeAsked } from "@stayput/job/sizing";
import type { Setup, Skies } from "@stayput/sim";
import type { Read } from "./protocol.ts";

/** Fewer skies than the bench draws: a picture of chances to the nearest twentieth does not need more. */
export const sizeSkies: Skies = { seed: 1, draws: 100 };

/** What to size for, and what was assumed; the first setup is what comes out. */
export const sizeRequest = ({ job, study }: Read, setup: Setup): SizeAsked =>
  requestOf(job, study.trip, { setup, fitted: study.setups[0] ?? setup });
