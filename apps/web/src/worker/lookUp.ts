import type { TypedLoad } from "./typedLoad.ts";
import type { LoadsFound, PlaceHit } from "./protocol.ts";

/** The catalogue's tables are fetched when they are first searched, the places apart from the equipment. */
const catalogue = () => import("./equipment.ts");
const atlas = () => import("@stayput/catalogue/places");

export async function placesFor(text: string): Promise<PlaceHit[]> {
  const { countryName, searchPlaces } = await atlas();
  return searchPlaces(text, 12).map(({ id, name, country }) => ({ id, name, country: countryName(country) }));
}

export async function placeCalled(id: string): Promise<PlaceHit | null> {
  const { countryName, findPlace } = await atlas();
  const place = findPlace(id);
  return place === undefined ? null : { id, name: place.name, country: countryName(place.country) };
}

/** @param volts_V at which amps are taken [V] */
export async function loadsFor(text: string, volts_V: number): Promise<LoadsFound> {
  const { searchAppliances } = await catalogue();
  const typed = await typedIn(text, volts_V);
  const rows = typed?.name === "" ? [] : searchAppliances(typed?.name ?? text, 12);
  return {
    typed,
    rows: rows.map((row) => ({
      id: row.id,
      name: row.name,
      draw: drawOf(row),
      source: row.source,
      standing: row.standing,
    })),
  };
}

/** The reader of words is fetched only where a figure has a unit behind it. */
async function typedIn(text: string, volts_V: number): Promise<TypedLoad | null> {
  if (!/\d\s*[mk]?(?:A|W|VA)/i.test(text)) return null;
  const { typedLoad } = await import("./typedLoad.ts");
  return typedLoad(text, volts_V);
}

type Row = Awaited<ReturnType<typeof catalogue>>["loadRows"][number];

function drawOf(row: Row): string {
  if (row.kind === "appliance") return `${row.watts} W${row.supply === "ac" ? ", 230 V" : ""}`;
  if (row.kind === "compressor-fridge") return `${row.rated_Wh_day} Wh a day at ${row.ratedAt_C} °C`;
  return `${row.element_dc_W} W on 12 V, or gas`;
}

/** A load ready to stand in the job, from a row of the catalogue. */
export async function loadFromRow(rowId: string, id: string): Promise<unknown> {
  const { loadFrom, loadRows } = await catalogue();
  const row = loadRows.find((each) => each.id === rowId);
  return row === undefined ? null : loadFrom(row, id);
}
