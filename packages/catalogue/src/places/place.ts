import type { Climate } from "@stayput/sim";

/** How a place's temperatures came about. All but `obs` are to be trusted less; placeNotes says it in words. */
export type TemperatureQuality = "obs" | "mid" | "blend" | "normal" | "interp";

/** A named place with the climate tables taken at it. */
export interface Place {
  readonly id: string;
  readonly name: string;
  /** ISO 3166-1 alpha-2 */
  readonly country: string;
  /** north positive */
  readonly latitude_deg: number;
  /** east positive */
  readonly longitude_deg: number;
  readonly elev_m: number;
  /** standard time's lead on UTC [h] */
  readonly utcOffset_h: number;
  /** mean daily global horizontal irradiation by month, January first, 12 values */
  readonly ghi_kWh_m2_day: readonly number[];
  /** mean daily maximum and minimum air temperature by month, 12 values each */
  readonly tmax_C: readonly number[];
  readonly tmin_C: readonly number[];
  /** the short list to offer before anything is typed */
  readonly core: boolean;
  readonly temperatureQuality: TemperatureQuality;
  /** years of record behind the thinnest month */
  readonly temperatureYears: number;
  /** `check`: the satellite radiation is doubtful here */
  readonly radiationFlag: "ok" | "check";
  readonly region: string;
  /** the grid, and the WMO number of the station */
  readonly sourceId: string;
}

/**
 * How strongly a day's sky follows the day before's: lag-1 of the Gaussian AR(1), where nothing better is known.
 * Source: Graham, Hollands & Huget 1988. Dry and tropical places run to 0.4-0.5; no rule with a source was found that
 * says where, so every place has this value and a job may give its own.
 */
export const dayToDayDefault = 0.29;

/** A place as the simulation wants it. */
export function climateOf(place: Place): Climate {
  const { latitude_deg, longitude_deg, utcOffset_h, ghi_kWh_m2_day, tmax_C, tmin_C } = place;
  return { latitude_deg, longitude_deg, utcOffset_h, ghi_kWh_m2_day, tmax_C, tmin_C, dayToDay: dayToDayDefault };
}
