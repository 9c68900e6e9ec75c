/**
 * The simulation: from a climate, a trip, what runs and what is fitted, to how long it lasts and why.
 *
 * @module @stayput/sim
 */
export type * from "./study.ts";
export type * from "./answers/types.ts";
export * from "./bank/index.ts";
export * from "./sun/index.ts";
export * from "./air/index.ts";
export * from "./array/index.ts";
export * from "./feed/index.ts";
export * from "./answers/explain.ts";
export { ledgerOf, type HoursAnswer, type HoursOptions } from "./answers/hours.ts";
export type { EnergyByLoad, HourParts } from "./answers/byLoad.ts";
export { planStudy, type StudyPlan } from "./answers/planStudy.ts";
export * from "./answers/dayOfIt.ts";
export { sway, swayInParts, type SwayAnswer, type SwayRow } from "./answers/sway.ts";
export * from "./answers/inParts.ts";
export * from "./stay/index.ts";
export { strandedLoads } from "./answers/cautions.ts";
export { feedCautions } from "./answers/solvedWiring.ts";
export { wiring } from "./answers/wiring.ts";
export { peakBank, peaks, type PeakBank } from "./answers/wiringPeaks.ts";
export type * from "./answers/wiringTypes.ts";
export * from "./answers/roundTheYear.ts";
export { size, sizeInParts } from "./answers/size.ts";
export { laddersOf, newBank, type Ladder } from "./answers/sizeLadder.ts";
export { chanceGrid, chanceGridInParts } from "./answers/chanceGrid.ts";
export type * from "./answers/sizeTypes.ts";
export * from "./answers/compare.ts";
export type * from "./answers/compareTypes.ts";
export { refillHours, type RefillHours } from "./answers/refill.ts";
export { refillWith, type BiggerFeed, type RefillAnswer } from "./answers/refillWith.ts";
export * from "./answers/upgrades.ts";
export type * from "./answers/upgradeTypes.ts";
export * from "./answers/match.ts";
export type * from "./answers/matchTypes.ts";
export * from "./answers/handbook.ts";
export * from "./answers/crossCheck.ts";
export { lossOfLoad, type DailyChange } from "./answers/lossOfLoad.ts";
