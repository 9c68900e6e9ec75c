import { readFileSync } from "node:fs";
import { nearestStations, radiationAt, stations, temperatureFrom } from "@stayput/catalogue/grid";
import type { Check } from "./compare.ts";

interface Cell {
  lat_sw: number;
  lon_sw: number;
  ghi_kWh_m2_day: number[];
}
interface StationSample {
  wmo: string;
  lat: number;
  lon: number;
  elev_m: number;
  tmax_C: number[];
  tmin_C: number[];
}
interface Samples {
  cells: Cell[];
  blocks: [Cell, Cell, Cell, Cell][];
  stations: StationSample[];
}

const samples = JSON.parse(
  readFileSync(new URL("../fixtures/climate/samples.json", import.meta.url), "utf8"),
) as Samples;
const sse = "NASA SSE Release 6.0, rows of the published grid";
const climat = "Deutscher Wetterdienst, CLIMAT reports, means 2003-2021, rows of the published table";
const months = Array.from({ length: 12 }, (_, month) => month);
const within = ({ lat_sw }: Cell) => lat_sw + 0.5 >= -60 && lat_sw + 0.5 <= 72;

/** The table keeps whole numbers of 1/80 of a root: half of one is off by √g/80, and the square of 1/160. */
const rounding = (ghi: number) => Math.sqrt(ghi) / 80 + 1 / 160 ** 2 + 1e-9;

const cellChecks = samples.cells.filter(within).flatMap((cell) =>
  months.map((month): Check => {
    const expected = cell.ghi_kWh_m2_day[month]!;
    return {
      id: `cell ${cell.lat_sw},${cell.lon_sw} month ${month + 1}`,
      quantity: "radiation at a cell's centre",
      unit: "kWh/m²/day",
      source: sse,
      standing: "published",
      expected,
      tolerance: { abs: rounding(expected) },
      got: () => radiationAt(cell.lat_sw + 0.5, cell.lon_sw + 0.5)[month]!,
    };
  }),
);

/** Three quarters of the way east and a quarter of the way north between four centres, by hand. */
const blockChecks = samples.blocks.flatMap(([southWest, southEast, northWest, northEast]) =>
  months.map((month): Check => {
    const [sw, se, nw, ne] = [southWest, southEast, northWest, northEast].map((cell) => cell.ghi_kWh_m2_day[month]!);
    const expected = (sw! * 0.25 + se! * 0.75) * 0.75 + (nw! * 0.25 + ne! * 0.75) * 0.25;
    return {
      id: `between ${southWest.lat_sw},${southWest.lon_sw} and its neighbours, month ${month + 1}`,
      quantity: "radiation between cells, bilinear",
      unit: "kWh/m²/day",
      source: `${sse}; recipe of shared/climate/SOURCES.md`,
      standing: "own computation from the published equation",
      expected,
      tolerance: { abs: rounding(Math.max(sw!, se!, nw!, ne!)) },
      got: () => radiationAt(southWest.lat_sw + 0.75, southWest.lon_sw + 1.25)[month]!,
    };
  }),
);

const stationChecks = samples.stations.flatMap((sample) =>
  (["tmax_C", "tmin_C"] as const).map((table): Check => {
    return {
      id: `station ${sample.wmo} ${table}`,
      quantity: "station table, worst month",
      unit: "°C",
      source: climat,
      standing: "published",
      expected: 0,
      tolerance: { abs: 1e-9 },
      got: () => {
        const { station, distance_km } = nearestStations(sample.lat, sample.lon, 1)[0]!;
        if (distance_km > 1e-6 || station.elev_m !== sample.elev_m) return NaN;
        return Math.max(...months.map((month) => Math.abs(station[table][month]! - sample[table][month]!)));
      },
    };
  }),
);

interface Errors {
  tmax: number;
  tmin: number;
  mean: number;
}
let known: Errors | null = null;

/** Root mean square errors when each station is predicted from the eight nearest others at its own height. */
function leaveOneOut(): Errors {
  if (known) return known;
  const sums = { tmax: 0, tmin: 0, mean: 0 };
  for (const station of stations()) {
    const near = nearestStations(station.latitude_deg, station.longitude_deg, 9).filter((s) => s.station !== station);
    const { tmax_C, tmin_C } = temperatureFrom(near.slice(0, 8), station.elev_m);
    for (const month of months) {
      const [max, min] = [tmax_C[month]! - station.tmax_C[month]!, tmin_C[month]! - station.tmin_C[month]!];
      sums.tmax += max ** 2;
      sums.tmin += min ** 2;
      sums.mean += ((max + min) / 2) ** 2;
    }
  }
  const rms = (sum: number) => Math.sqrt(sum / (12 * stations().length));
  return (known = { tmax: rms(sums.tmax), tmin: rms(sums.tmin), mean: rms(sums.mean) });
}

const leftOut = (
  [
    ["tmax", 1.8],
    ["tmin", 1.8],
    ["mean", 1.4],
  ] as const
).map(([of, expected]): Check => {
  return {
    id: of,
    quantity: "RMSE of stations predicted from their neighbours",
    unit: "°C",
    source: "shared/climate/SOURCES.md: 1.4 for the mean, 1.8 for maximum and minimum",
    standing: "published",
    expected,
    // given to one decimal, and for maximum and minimum together
    tolerance: { abs: 0.1 },
    got: () => leaveOneOut()[of],
  };
});

export const checks: readonly Check[] = [...cellChecks, ...blockChecks, ...stationChecks, ...leftOut];
