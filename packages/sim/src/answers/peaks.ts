import type { Found, SetupPlan } from "../stay/index.ts";
import type { LoadPeak } from "./wiringTypes.ts";
import { peakBank, peaks } from "./wiringPeaks.ts";

/** Each large load at the lowest charge of the stay. */
export function peaksOf({ setup, bank }: SetupPlan, { lowest }: Found): LoadPeak[] {
  return peaks(setup.loads, setup.inverter, peakBank(bank), lowest);
}
