import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { radiationTable } from "../../../packages/catalogue/src/climate/radiation.ts";
import { stationPlanes } from "../../../packages/catalogue/src/climate/stations.ts";
import type { Plane } from "../../../packages/catalogue/src/climate/planes.ts";
import { csvRows, finite, months } from "./climate/csv.ts";
import { packPlanes } from "./climate/packPlanes.ts";

/**
 * Derives the project's climate tables from the published ones: `npm run climate -- FOLDER`, FOLDER holding
 * nasa_sse6_ghi_1deg.csv.gz, climat_stations.csv.gz and places.csv as shared/climate/SOURCES.md describes them.
 * Writes packages/catalogue/src/data/{radiation,stations,places}.ts and tests/fixtures/climate/samples.json.
 * The same sources give the same bytes.
 */
const folder = process.argv[2];
if (!folder) {
  console.error("usage: npm run climate -- FOLDER-WITH-THE-CLIMATE-SOURCES");
  process.exit(2);
}
const root = join(import.meta.dirname, "../../..");
const source = (name: string) => {
  const bytes = readFileSync(join(folder, name));
  return csvRows((name.endsWith(".gz") ? gunzipSync(bytes) : bytes).toString("utf8"));
};

type Rows = ReturnType<typeof csvRows>;

const cells = source("nasa_sse6_ghi_1deg.csv.gz");
const climat = boustrophedon(
  source("climat_stations.csv.gz").filter((row) => months(row, "tmax_") && months(row, "tmin_")),
);
const places = source("places.csv");

write("packages/catalogue/src/data/radiation.ts", radiationModule(cells));
write("packages/catalogue/src/data/stations.ts", stationsModule(climat));
write("packages/catalogue/src/data/places.ts", placesModule(places));
write("tests/fixtures/climate/samples.json", samples(cells, climat));

function radiationModule(rows: Rows): string {
  const { southEdge_deg, rows: height, columns, perRoot } = radiationTable;
  const planes = Array.from({ length: 12 }, () => new Int32Array(height * columns).fill(-1));
  for (const row of rows) {
    const y = finite(row["lat_sw"], "lat_sw") - southEdge_deg;
    if (y < 0 || y >= height) continue;
    const at = y * columns + finite(row["lon_sw"], "lon_sw") + 180;
    months(row, "ghi_")!.forEach((ghi, month) => (planes[month]![at] = Math.round(perRoot * Math.sqrt(ghi))));
  }
  if (planes.some((plane) => plane.includes(-1))) throw new Error("the radiation grid has gaps");
  const changes = planes.map((plane, month): Plane => {
    const before = planes[month - 1];
    return { rows: height, columns, values: before ? plane.map((level, at) => level - before[at]!) : plane };
  });
  return packedModule("NASA SSE Release 6.0, monthly means 1983-2005", { radiationPacked: packPlanes(changes) });
}

function stationsModule(rows: Rows): string {
  const { perDegree, perC } = stationPlanes;
  const whole = (name: string, per: number) => rows.map((row) => Math.round(per * finite(row[name], name)));
  const tenths = (row: Rows[number], prefix: string) => months(row, prefix)!.map((t) => Math.round(perC * t));
  const maxima = rows.flatMap((row) => tenths(row, "tmax_"));
  const minima = rows.flatMap((row) => tenths(row, "tmin_"));
  const tables = [
    whole("lat", perDegree),
    whole("lon", perDegree),
    whole("elev_m", 1),
    maxima,
    maxima.map((max, at) => max - minima[at]!),
  ];
  const planes = tables.map((table, i): Plane => {
    return { rows: rows.length, columns: stationPlanes.columns[i]!, values: Int32Array.from(table) };
  });
  return packedModule("Deutscher Wetterdienst, CLIMAT reports, means 2003-2021, values processed", {
    stationCount: rows.length,
    stationsPacked: packPlanes(planes),
  });
}

function placesModule(rows: Rows): string {
  const numbered = (prefix: string) => Array.from({ length: 12 }, (_, m) => `${prefix}${m + 1}`);
  const columns = [
    ...["id", "name", "country", "lat", "lon", "elev_m", "utc_offset_h"],
    ...[...numbered("ghi_"), ...numbered("tmax_"), ...numbered("tmin_")],
    ...["source_id", "region", "core", "temp_quality", "temp_min_years", "ghi_flag"],
  ];
  const lines = rows.map((row) => columns.map((name) => row[name]!).join(","));
  const bad = lines.find((line) => /[`\\$"]/.test(line) || line.split(",").length !== columns.length);
  if (bad) throw new Error(`a place that needs quoting: ${bad}`);
  return `${heading("Named places: NASA SSE Release 6.0 and Deutscher Wetterdienst CLIMAT, values processed")}
export const placesCsv = \`${[columns.join(","), ...lines].join("\n")}\`;
`;
}

/** Up one strip of 5° of longitude and down the next, so that each station follows one with a climate like its own. */
function boustrophedon(rows: Rows): Rows {
  const key = (row: Rows[number]): [number, number, string] => {
    const strip = Math.floor(finite(row["lon"], "lon") / 5);
    return [strip, strip % 2 === 0 ? Number(row["lat"]) : -Number(row["lat"]), row["wmo"]!];
  };
  const byKey = (a: Rows[number], b: Rows[number]) => {
    const [x, y] = [key(a), key(b)];
    return x[0] - y[0] || x[1] - y[1] || (x[2] < y[2] ? -1 : 1);
  };
  return rows.toSorted(byKey);
}

/** A few rows of the sources as they stand, to hold the packed tables against. Chosen by a fixed rule, not by hand. */
function samples(grid: Rows, stationRows: Rows): string {
  const { southEdge_deg, rows: height } = radiationTable;
  const inRange = grid.filter((row) => {
    const south = finite(row["lat_sw"], "lat_sw");
    return south >= southEdge_deg && south < southEdge_deg + height;
  });
  const edges = inRange.filter((row) => {
    const [south, west] = [Number(row["lat_sw"]), Number(row["lon_sw"])];
    return [-61, 0, 72].includes(south) && [-180, -1, 0, 179].includes(west);
  });
  const scattered = inRange.filter((row) => hash(`${row["lat_sw"]},${row["lon_sw"]}`) % 860 === 0);
  // whole blocks of four, for the bilinear recipe: a desert, a mountainous coast, the date line, a far-north winter
  const corners = [...[...[-29, 20], ...[-43, 171]], ...[...[51, 179], ...[68, 18]]];
  const blocks = [0, 2, 4, 6].map((i) => {
    const [south, west] = [corners[i]!, corners[i + 1]!];
    const at = (lat: number, lon: number) => grid[(lat + 90) * 360 + ((lon + 180 + 360) % 360)]!;
    return [at(south, west), at(south, west + 1), at(south + 1, west), at(south + 1, west + 1)].map(cellSample);
  });
  return `${JSON.stringify(
    {
      about: "Rows of the published tables as they stand, written by apps/chores/src/deriveClimate.ts",
      credits: [
        "NASA Langley Research Center Atmospheric Science Data Center, SSE Release 6.0",
        "Data basis: Deutscher Wetterdienst, CLIMAT reports, values processed (multi-year means)",
      ],
      cells: [...edges, ...scattered].map(cellSample),
      blocks,
      stations: stationRows.filter((row) => hash(row["wmo"]!) % 70 === 0).map(stationSample),
      stationCount: stationRows.length,
    },
    null,
    1,
  ).replace(/\[\s+(-?[\d.]+,?\s+)+\]/g, (list) => list.replace(/\s+/g, " "))}\n`;
}

function cellSample(row: Rows[number]) {
  return { lat_sw: Number(row["lat_sw"]), lon_sw: Number(row["lon_sw"]), ghi_kWh_m2_day: months(row, "ghi_") };
}

function stationSample(row: Rows[number]) {
  const [lat, lon, elev_m] = ["lat", "lon", "elev_m"].map((name) => finite(row[name], name));
  return { wmo: row["wmo"], lat, lon, elev_m, tmax_C: months(row, "tmax_"), tmin_C: months(row, "tmin_") };
}

function hash(text: string): number {
  return createHash("sha256").update(text).digest().readUInt32BE(0);
}

function heading(what: string): string {
  return `// ${what}.\n// Written by apps/chores/src/deriveClimate.ts; do not edit. Credits: shared/climate/SOURCES.md.`;
}

function packedModule(what: string, values: Record<string, string | number>): string {
  const lines = Object.entries(values).map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`);
  return `${heading(what)}\n${lines.join("\n")}\n`;
}

function write(path: string, text: string): void {
  mkdirSync(join(root, path, ".."), { recursive: true });
  writeFileSync(join(root, path), text);
  const digest = createHash("sha256").update(text).digest("hex").slice(0, 12);
  console.log(`${path}: ${text.length} bytes, sha256 ${digest}`);
}
