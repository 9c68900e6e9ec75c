import { countryName, placeNotes, searchPlaces, type Place } from "@stayput/catalogue";
import { degreesSaid } from "../text/placeSaid.ts";
import { plain } from "../text/plain.ts";
import { table, type Column } from "../text/table.ts";
import { item } from "../text/wrap.ts";
import type { Run } from "./verb.ts";

/** Places by name, id or country; without a name the short list. */
export const placesVerb: Run = ({ operands, options }) => {
  const places = searchPlaces(operands.join(" "), options.limit);
  return Promise.resolve(
    options.json ? `${JSON.stringify({ places: places.map(row) }, null, 2)}\n` : said(places, operands),
  );
};

function row(place: Place): object {
  const { id, name, country, latitude_deg, longitude_deg, elev_m, utcOffset_h } = place;
  const notes = placeNotes(place);
  return {
    id,
    name,
    country,
    countryName: countryName(country),
    latitude_deg,
    longitude_deg,
    elev_m,
    utcOffset_h,
    notes,
  };
}

const columns: Column[] = [
  { head: "id", align: "left" },
  { head: "name", align: "left" },
  { head: "country", align: "left" },
  { head: "latitude", align: "right" },
  { head: "longitude", align: "right" },
];

function said(places: readonly Place[], operands: readonly string[]): string {
  if (places.length === 0) return `No place is called ${JSON.stringify(plain(operands.join(" "), 60))}.\n`;
  const rows = places.map(({ id, name, country, latitude_deg, longitude_deg }) => [
    id,
    name,
    countryName(country),
    degreesSaid(latitude_deg, "N", "S"),
    degreesSaid(longitude_deg, "E", "W"),
  ]);
  const notes = places.flatMap((place) => placeNotes(place).map((note) => `${place.id}: ${note}`));
  return `${[...table(columns, rows), ...(notes.length === 0 ? [] : ["", ...notes.flatMap(item)])].join("\n")}\n`;
}
