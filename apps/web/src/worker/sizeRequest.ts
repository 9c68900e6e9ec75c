import { sizeRequest as requestOf, type SizeAsked } from "@stayput/job/sizing";
import type { Setup, Skies } from "@stayput/sim";
import type { Read } from "./protocol.ts";

/** Those of the command line, so that a counter and a desk say the same. */
export const sizeSkies: Skies = { seed: 1, draws: 200 };

/** What to size for, and what was assumed; the first setup is what comes out. */
export const sizeRequest = ({ job, study }: Read, setup: Setup): SizeAsked =>
  requestOf(job, study.trip, { setup, fitted: study.setups[0] ?? setup });
