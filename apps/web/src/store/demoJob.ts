import type { JobInput } from "@stayput/job";
import demo from "../../../../shared/demo/family-caravan.json";

/** An invented job, open at first so that the sheet explains itself. */
export const demoJob = demo as unknown as JobInput;
