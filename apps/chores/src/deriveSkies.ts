/**
 * Derives the figures that drawn skies are held to from daily records of irradiation. Run again with:
 *
 *   node --import tsx apps/chores/src/deriveSkies.ts FOLDER
 *
 * FOLDER holds one CSV a station (nl-*.csv from KNMI, us-*.csv from TMY3), with the columns date and GHI_kWh_m2_day and, in
 * typical years, source_year. Writes tests/fixtures/skies/STATION.json; nothing else of the records is kept.
 *
 * Clearness is taken over the sun of astronomy-engine on each date. The files' own H0 follows a simpler declination, which
 * is up to 1.1° off and makes October 4 to 6 % too bright outside the air at 50° N.
 */
import { AstroTime, Body, Equator, HelioDistance, Observer } from "astronomy-engine";
import { readFileSync, writeFileSync, mkdirSync } from "node:fs";
import { join } from "node:path";

/** Co-ordinates: KNMI's and NREL's own station lists, from memory to 0.01°. */
const STATIONS = [
  { id: "nl-cabauw", name: "Cabauw, Netherlands", latitude_deg: 51.97, record: "knmi" },
  { id: "nl-lelystad", name: "Lelystad, Netherlands", latitude_deg: 52.46, record: "knmi" },
  { id: "us-albuquerque", name: "Albuquerque, New Mexico", latitude_deg: 35.04, record: "tmy3" },
  { id: "us-duluth", name: "Duluth, Minnesota", latitude_deg: 46.83, record: "tmy3" },
  { id: "us-quillayute", name: "Quillayute, Washington", latitude_deg: 47.93, record: "tmy3" },
] as const;

const RECORDS = {
  knmi: {
    kind: "measured days",
    credit: "KNMI (Royal Netherlands Meteorological Institute), daily data of its weather stations",
    licence: "CC0 1.0: no rights reserved",
  },
  tmy3: {
    kind: "one typical year put together from measured and modelled months",
    credit: "National Renewable Energy Laboratory, Typical Meteorological Year 3 (2008)",
    licence: "Work of the United States government, in the public domain in the United States",
  },
} as const;

const SHARES = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95];
const WINDOW = 5;

interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly ghi: number;
  /** [kWh/m²] */
  readonly h0: number;
  readonly clearness: number;
}

/** Duffie & Beckman, eq. 1.10.3, on the sun of the date's noon, solar constant 1361 W/m² [kWh/m²]. */
function outside_kWh_m2(latitude_deg: number, date: Date): number {
  const time = new AstroTime(date);
  const declination = (Equator(Body.Sun, time, new Observer(0, 0, 0), true, true).dec * Math.PI) / 180;
  const latitude = (latitude_deg * Math.PI) / 180;
  const sunset = Math.acos(-Math.tan(latitude) * Math.tan(declination));
  const swing = Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  const still = sunset * Math.sin(latitude) * Math.sin(declination);
  return ((24 / Math.PI) * 1.361 * (swing + still)) / HelioDistance(Body.Earth, time) ** 2;
}

function read(file: string, latitude_deg: number): Day[] {
  const [head = "", ...lines] = readFileSync(file, "utf8").trim().split(/\r?\n/);
  const column = new Map(head.split(",").map((name, i) => [name, i]));
  return lines.map((line) => {
    const cells = line.split(",");
    const number = (name: string): number => {
      const value = Number.parseFloat(cells[column.get(name) ?? -1] ?? "");
      if (!Number.isFinite(value)) throw new Error(`${file}: no ${name} in "${line}"`);
      return value;
    };
    const date = (cells[0] ?? "").split("-").map(Number);
    const [day = NaN, month = NaN, year = 0] = date.toReversed(); // a typical year's dates have no year
    const ghi = number("GHI_kWh_m2_day");
    const source = year > 0 ? year : number("source_year");
    const h0 = outside_kWh_m2(latitude_deg, new Date(Date.UTC(source, month - 1, day, 12)));
    return { year, month, day, ghi, h0, clearness: ghi / h0 };
  });
}

/** Runs of following days within one month of one year. */
function runs(days: readonly Day[], month: number): number[][] {
  const found: number[][] = [];
  let last: Day | undefined;
  for (const day of days.filter((d) => d.month === month)) {
    const follows = last !== undefined && last.year === day.year && last.day + 1 === day.day;
    if (!follows) found.push([]);
    found.at(-1)?.push(day.clearness);
    last = day;
  }
  return found;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;
const round = (value: number): number => Number(value.toFixed(4));

/** Quantiles between order statistics in straight lines (type 7 of Hyndman & Fan). */
function quantiles(values: readonly number[]): number[] {
  const sorted = values.toSorted((a, b) => a - b);
  return SHARES.map((share) => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    const low = sorted[below] ?? NaN;
    return round(low + (place - below) * ((sorted[below + 1] ?? low) - low));
  });
}

function lagOne(sequences: readonly number[][]): number {
  const all = sequences.flat();
  const middle = mean(all);
  const variance = mean(all.map((k) => (k - middle) ** 2));
  const products = sequences.flatMap((run) => run.slice(1).map((k, i) => (k - middle) * ((run[i] ?? NaN) - middle)));
  return round(mean(products) / variance);
}

function monthFigures(days: readonly Day[], month: number) {
  const ofMonth = days.filter((d) => d.month === month);
  const sequences = runs(days, month);
  const windows = sequences.flatMap((run) => run.slice(WINDOW - 1).map((_, i) => mean(run.slice(i, i + WINDOW))));
  return {
    month,
    days: ofMonth.length,
    ghi_kWh_m2_day: round(mean(ofMonth.map((d) => d.ghi))),
    h0_kWh_m2_day: round(mean(ofMonth.map((d) => d.h0))),
    clearness: round(sum(ofMonth.map((d) => d.ghi)) / sum(ofMonth.map((d) => d.h0))),
    daily: quantiles(ofMonth.map((d) => d.clearness)),
    fiveDay: quantiles(windows),
    lag1: lagOne(sequences),
  };
}

const folder = process.argv[2];
if (folder === undefined) throw new Error("give the folder of daily records: deriveSkies.ts FOLDER");
const out = new URL("../../../tests/fixtures/skies/", import.meta.url);
mkdirSync(out, { recursive: true });
for (const { record, ...station } of STATIONS) {
  const days = read(join(folder, `${station.id}.csv`), station.latitude_deg);
  const years = days.map((d) => d.year).filter((year) => year > 0);
  const figures = {
    about:
      "Derived from daily records by apps/chores/src/deriveSkies.ts: clearness is irradiation over extraterrestrial; quantiles of " +
      "single days and of every run of five days within a month; lag-1 of days within a month. The records are not here.",
    ...station,
    ...RECORDS[record],
    years: years.length > 0 ? [Math.min(...years), Math.max(...years)] : null,
    shares: SHARES,
    months: Array.from({ length: 12 }, (_, i) => monthFigures(days, i + 1)),
  };
  writeFileSync(new URL(`${station.id}.json`, out), `${JSON.stringify(figures)}\n`);
}
