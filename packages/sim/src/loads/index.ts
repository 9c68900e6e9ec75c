export { absorptionFridge, type AbsorptionFridgeHours } from "./absorptionFridge.ts";
export { applianceInverterLoss_W, applianceWatts, type ApplianceWatts } from "./applianceWatts.ts";
export { calibrateFridge, type Compartment, type FridgeModel } from "./calibrateFridge.ts";
export { compressorFridge, type CompressorFridgeHours } from "./compressorFridge.ts";
export { foodHours, type WarmingHours } from "./foodHours.ts";
export { inverterCoefficients, inverterRunningLoss_W, type InverterCoefficients } from "./inverter.ts";
export { runShare } from "./runShare.ts";
