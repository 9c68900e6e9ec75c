/**
 * The light entry: named places, credits and the tables of equipment. The grid is in `@stayput/catalogue/grid`.
 *
 * @module @stayput/catalogue
 */
export { distance_km } from "./climate/distance.ts";
export { skyClasses, type SkyClass, type SkyId } from "./climate/skyClasses.ts";
export { credits, type Credit } from "./credits.ts";
export * from "./places/index.ts";
export * from "./tables/index.ts";
export type { Row, Standing } from "./row.ts";
