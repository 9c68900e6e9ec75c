import { dayOfYear, monthlyClearness, type Climate } from "@stayput/sim";
import { dayToDayDefault } from "../places/place.ts";
import { skyClasses, type SkyId } from "./skyClasses.ts";
import { stations, type Station } from "./stations.ts";

/** Stations within this of the latitude give the temperature. Chosen. */
const band_deg = 2.5;

/**
 * A guess at the climate of a bare latitude under skies of a kind: radiation is the class's clearness times each month's
 * mean of the sun above the air; temperatures are the mean of the stations within 2.5° of latitude, for mixed and dull
 * skies of that half of them whose months differ less over the year. Chosen; the notes say it to the user.
 *
 * @param latitude_deg -60 to 72, north positive
 * @throws RangeError that names the field, what was given and what is accepted
 */
export function climateBySky(latitude_deg: number, sky: SkyId): { climate: Climate; notes: readonly string[] } {
  if (!(latitude_deg >= -60 && latitude_deg <= 72))
    throw new RangeError(`latitude_deg must be -60 to 72, got ${latitude_deg}`);
  const row = skyClasses.find(({ id }) => id === sky);
  if (!row) throw new RangeError(`sky must be ${skyClasses.map(({ id }) => id).join(", ")}, got ${sky as string}`);
  const band = stationsRound(latitude_deg);
  const chosen = sky === "clear" ? band : evener(band);
  const outside_kWh = meanExtraterrestrial_kWh_m2(latitude_deg);
  const climate: Climate = {
    latitude_deg,
    longitude_deg: null,
    utcOffset_h: null,
    ghi_kWh_m2_day: outside_kWh.map((h0) => row.clearness * h0),
    tmax_C: months((month) => mean(chosen.map(({ tmax_C }) => tmax_C[month]!))),
    tmin_C: months((month) => mean(chosen.map(({ tmin_C }) => tmin_C[month]!))),
    dayToDay: dayToDayDefault,
  };
  const notes = [
    `A guess from latitude and ${row.name.toLowerCase()} skies alone. ${row.meaning} A longitude, or a named place, is far better.`,
    `Temperatures are the mean of weather stations at like latitudes round the world (${chosen.length} of them): nine times in ten within 7 °C.`,
  ];
  return { climate, notes };
}

/** The stations within the band, widened where it holds none (58° S). */
function stationsRound(latitude_deg: number): Station[] {
  for (let within = band_deg; ; within += band_deg) {
    const found = stations().filter((station) => Math.abs(station.latitude_deg - latitude_deg) <= within);
    if (found.length > 0) return found;
  }
}

/** The half of the stations, rounded up, whose warmest and coldest months differ least. */
function evener(from: readonly Station[]): Station[] {
  return from.toSorted((a, b) => yearlyRange_C(a) - yearlyRange_C(b)).slice(0, Math.ceil(from.length / 2));
}

function yearlyRange_C({ tmax_C, tmin_C }: Station): number {
  const middles = tmax_C.map((max, month) => (max + tmin_C[month]!) / 2);
  return Math.max(...middles) - Math.min(...middles);
}

/**
 * Mean of the extraterrestrial irradiation over every day of each month [kWh/m²/day], 12 values: by the simulation's own
 * days, so that it finds the class's clearness again to the last digit.
 */
function meanExtraterrestrial_kWh_m2(latitude_deg: number): number[] {
  const { h0_Wh_m2 } = monthlyClearness({ latitude_deg, ghi_kWh_m2_day: months(() => 0) });
  return months((month) => {
    const next = month === 11 ? 366 : dayOfYear(month + 2, 1);
    return mean([...h0_Wh_m2.subarray(dayOfYear(month + 1, 1) - 1, next - 1)]) / 1000;
  });
}

function months(of: (month: number) => number): number[] {
  return Array.from({ length: 12 }, (_, month) => of(month));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
