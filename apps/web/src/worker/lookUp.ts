import type { LoadHit, PlaceHit } from "./protocol.ts";

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

export async function loadsFor(text: string): Promise<LoadHit[]> {
  const { searchAppliances } = await catalogue();
  return searchAppliances(text, 12).map((row) => ({
    id: row.id,
    name: row.name,
    draw: drawOf(row),
    source: row.source,
    standing: row.standing,
  }));
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
