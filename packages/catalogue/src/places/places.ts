import { placesCsv } from "../data/places.ts";
import type { Place, TemperatureQuality } from "./place.ts";

/** Every named place. Data: NASA SSE Release 6.0 and DWD CLIMAT (see credits). */
export const places: readonly Place[] = /* @__PURE__ */ readPlaces(placesCsv);

/** The place of that id, or undefined. */
export function findPlace(id: string): Place | undefined {
  return places.find((place) => place.id === id);
}

function readPlaces(csv: string): Place[] {
  const [header, ...lines] = csv.split("\n").map((line) => line.split(","));
  return lines.map((cells) => {
    const text = (column: string) => cells[header!.indexOf(column)]!;
    const number = (column: string) => Number(text(column));
    const months = (prefix: string) => Array.from({ length: 12 }, (_, month) => number(`${prefix}${month + 1}`));
    return {
      id: text("id"),
      name: text("name"),
      country: text("country"),
      latitude_deg: number("lat"),
      longitude_deg: number("lon"),
      elev_m: number("elev_m"),
      utcOffset_h: number("utc_offset_h"),
      ghi_kWh_m2_day: months("ghi_"),
      tmax_C: months("tmax_"),
      tmin_C: months("tmin_"),
      core: text("core") === "1",
      temperatureQuality: text("temp_quality") as TemperatureQuality,
      temperatureYears: number("temp_min_years"),
      radiationFlag: text("ghi_flag") === "ok" ? "ok" : "check",
      region: text("region"),
      sourceId: text("source_id"),
    };
  });
}
