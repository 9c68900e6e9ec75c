import { mustLie } from "./must.ts";

/** Where a clock stands: the part of a climate that time needs. */
export interface ClockPlace {
  /** [deg] east positive; null: clock time is solar time */
  readonly longitude_deg: number | null;
  /** standard time's lead on UTC [h]; null with a null longitude */
  readonly utcOffset_h: number | null;
}

/** Angle of the year: 0 on 1 January, 2π a year later [rad]. Source: Spencer (1971), Search 2(5):172. */
export function dayAngle_rad(dayOfYear: number): number {
  return (2 * Math.PI * (dayOfYear - 1)) / 365;
}

/**
 * Where in Spencer's series the noon of a present day lies: 1.25 days on. Half a day because the series counts from a day's
 * start, and 0.75 because the calendar of the 2020s runs that much behind that of 1950, which it was fitted to. Without it
 * declination at noon is 0.34° off on average and 0.54° at worst in 2025; with it 0.02° and 0.05° (0.07° and 0.27° over a
 * leap cycle, which a year of 365 days cannot follow). Functions of a bare day number, as in handbooks, take it as given.
 *
 * @param dayOfYear 1 to 365 [day]
 * @returns 1 to below 366 [day]
 */
export function seriesDay(dayOfYear: number): number {
  return ((dayOfYear + 0.25) % 365) + 1;
}

/**
 * Equation of time: how far a sundial is ahead of a clock that runs evenly.
 * Source: Spencer (1971), Search 2(5):172, as in Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 1.5.3.
 *
 * @param dayOfYear 1 to 366 [day]
 * @returns minutes, -14.3 in February to +16.4 in November [min]
 * @throws RangeError outside 1 to 366
 */
export function equationOfTime_min(dayOfYear: number): number {
  mustLie("dayOfYear", dayOfYear, 1, 366);
  const b = dayAngle_rad(dayOfYear);
  const series =
    0.000075 + 0.001868 * Math.cos(b) - 0.032077 * Math.sin(b) - 0.014615 * Math.cos(2 * b) - 0.04089 * Math.sin(2 * b);
  return 229.2 * series;
}

/**
 * How far solar time is ahead of the clock: longitude / 15 - utcOffset + E / 60.
 * Source: Duffie & Beckman, section 1.5, with longitude counted east. With a bare latitude it is 0.
 *
 * @param dayOfYear 1 to 365, a present day: see `seriesDay` [day]
 * @returns hours to add to standard clock time [h]
 * @throws RangeError where only one of longitude and utcOffset is given, or one is out of range
 */
export function solarLead_h(place: ClockPlace, dayOfYear: number): number {
  const { longitude_deg, utcOffset_h } = place;
  if (longitude_deg === null && utcOffset_h === null) return 0;
  if (longitude_deg === null || utcOffset_h === null) {
    throw new RangeError(
      `longitude_deg and utcOffset_h must both be numbers or both null, got ${longitude_deg} and ${utcOffset_h}`,
    );
  }
  mustLie("longitude_deg", longitude_deg, -180, 180);
  mustLie("utcOffset_h", utcOffset_h, -14, 14);
  return longitude_deg / 15 - utcOffset_h + equationOfTime_min(seriesDay(dayOfYear)) / 60;
}
