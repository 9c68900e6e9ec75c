/**
 * The named places alone: 33 kB compressed.
 *
 * @module @stayput/catalogue/places
 */
export { countries, countryName } from "./countries.ts";
export { placeNotes } from "./notes.ts";
export { climateOf, dayToDayDefault, type Place, type TemperatureQuality } from "./place.ts";
export { findPlace, places } from "./places.ts";
export { nearestNames, nearestPlaces, searchPlaces } from "./search.ts";
