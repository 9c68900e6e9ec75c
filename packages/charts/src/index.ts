/**
 * Answers drawn as SVG.
 *
 * @module @stayput/charts
 */
export * from "./charge/index.ts";
export * from "./day/index.ts";
export * from "./run/index.ts";
export * from "./size/index.ts";
export * from "./uses/index.ts";
export * from "./upgrades/index.ts";
export * from "./year/index.ts";
export { daySketch, type Sketch } from "./sketch/daySketch.ts";
export { quarter, stripGeometry, type StripGeometry } from "./strip/stripGeometry.ts";
export { hatchDefs, hatchFill, toneClass, type EnergyKind } from "./paper/hatches.ts";
export { dashOf } from "./paper/lineStyles.ts";
export type { ChartGeometry, ChartOptions, ChartTable, FactOptions, Picture, Readout } from "./paper/picture.ts";
export { chartStyles } from "./paper/styles.ts";
export { toSvgText, type SavedPicture } from "./paper/svgText.ts";
export { textWidth_px } from "./paper/labels.ts";
export { templateText } from "./paper/templateText.ts";
export { colourNames, darkTheme, lightTheme, themeProperties, type ColourName, type Theme } from "./paper/theme.ts";
export {
  chanceInWords,
  sayChance,
  sayClock,
  sayDays,
  sayDaysShort,
  sayHourOf,
  sayList,
  sayMoment,
  sayMonth,
  sayNumber,
  sayPercent,
  sayRange,
  saySigned,
  sayWh,
} from "./paper/words.ts";
