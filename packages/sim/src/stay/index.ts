export { type Bus, newBus, settle } from "./bus.ts";
export { demandOf, together, type LoadDemand, type PartLoad } from "./demand.ts";
export { newLedger, unusedCauses, type Ledger, type LedgerColumn } from "./ledger.ts";
export { hourlyLoads, type Drive, type HourlyLoads, type MixedHours } from "./drive.ts";
export { newFound, run, type Found, type RunOptions } from "./run.ts";
export { bankTemp_C, harvest, parkedWith, planSetup, steadyFeed_A, type SetupPlan } from "./setupPlan.ts";
export { drawCount, skyOf, type Skies } from "./skies.ts";
export { arrivalHour, insideBankOffset_C, planeOf, planStay, shine, type LitPlane, type StayPlan } from "./stayPlan.ts";
