import * as z from "zod";
import { placeDefaults } from "../defaults.ts";
import { choice, fields, line, list, plain, quantity } from "./leaf.ts";

const name = line("What to call it", 120, 1);
const latitude = plain("Degrees north, south negative", -90, 90);
/** As far as the radiation grid and the stations go. */
const tabledLatitude = plain("Degrees north, south negative", -60, 72);
const longitude = plain("Degrees east, west negative", -180, 180);
const utcOffset_h = (omitted: string): z.ZodNumber =>
  plain(`Standard time's lead on UTC [h]; omitted: ${omitted}`, -12, 14);
const twelve = (about: string, of: z.ZodNumber): z.ZodArray<z.ZodNumber> =>
  list(`${about}, 12 values, January first`, of, 12, 12);

/** A place that the catalogue knows. */
export const namedPlace = fields("A place of the catalogue", {
  id: z
    .string({ error: "the id of a place in the catalogue" })
    .min(1, { error: "the id of a place in the catalogue" })
    .max(120, { error: "the id of a place in the catalogue" })
    .describe('Id of a place in the catalogue, such as "za-upington"'),
});

/** A place given whole: its own monthly climate. */
export const wholePlace = fields("A place with its own monthly climate", {
  name,
  latitude,
  longitude: longitude.optional(),
  utcOffset_h: utcOffset_h("from the longitude").optional(),
  ghi_kWh_m2_day: twelve(
    "Mean daily sun on the flat by month [kWh/m²/day]",
    plain("Mean daily sun on the flat", 0, 12),
  ),
  tmax_C: twelve("Mean daily maximum by month [°C]", quantity("Mean daily maximum", "temperature_C", -60, 60)),
  tmin_C: twelve("Mean daily minimum by month [°C]", quantity("Mean daily minimum", "temperature_C", -70, 50)),
  dayToDay: plain("How far a day's sky follows the day before's (lag-1)", 0, 0.9).default(placeDefaults.dayToDay),
});

/** Any point on land, from the radiation grid and the nearest stations. */
export const gridPlace = fields("Any point on land, from the grid", {
  name,
  latitude: tabledLatitude,
  longitude,
  elev_m: quantity("Height above the sea; omitted: that of the nearest station", "height_m", -450, 6000).optional(),
  utcOffset_h: utcOffset_h("that of the nearest named place, or from the longitude where none is near").optional(),
});

/** A spot that no table has: a latitude and what its sky is like. */
export const skyPlace = fields("A latitude with a class of sky", {
  name,
  latitude: tabledLatitude,
  sky: choice("What most days are like there: the share of sun that comes through", ["clear", "mixed", "dull"]),
});

export const place = z
  .union([namedPlace, wholePlace, gridPlace, skyPlace], {
    error:
      "{ id }, or { name, latitude, longitude }, or { name, latitude, sky }, " +
      "or { name, latitude, ghi_kWh_m2_day, tmax_C, tmin_C }",
  })
  .describe("Where: a catalogue id, a point on land, a latitude with a class of sky, or a whole climate");

/** A place as it stands in a parsed job, in any of its forms. */
export type PlaceInJob = z.output<typeof place>;
