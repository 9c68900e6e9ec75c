/**
 * The heavy entry: the radiation grid and the weather stations, unpacked at first use. Load it when it is needed.
 *
 * @module @stayput/catalogue/grid
 */
export { climateAt, utcOffsetAt, type ClimateAt } from "./climate/climateAt.ts";
export { climateBySky } from "./climate/climateBySky.ts";
export { radiationAt } from "./climate/radiation.ts";
export { nearestStations, stations, type Station, type StationNear } from "./climate/stations.ts";
export { temperatureFrom } from "./climate/temperature.ts";
