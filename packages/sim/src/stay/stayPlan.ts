import { hourlyAir_C, meanAir_C } from "../air/index.ts";
import { hourInSpan, hourInWindow } from "../numeric/clock.ts";
import { mustLie } from "../numeric/must.ts";
import type { Climate, ShadeWindow, Trip } from "../study.ts";
import { dayOfYear, irradiate, meanClearnessByDay, planeGeometry, type PlaneGeometry } from "../sun/index.ts";

/** Clock hour of arrival: hour 0 of every stay. */
export const arrivalHour = 15;

/** How much warmer than outside a bank stands when it is inside [K] (chosen). */
export const insideBankOffset_C = 5;

/** A plane that panels lie in, and the light on it under the sky last set. */
export interface LitPlane {
  readonly geometry: PlaneGeometry;
  /** mean irradiance by calendar hour from midnight of the day of arrival [W/m²] */
  readonly light_W_m2: Float64Array;
}

/** All that neither bank nor setup changes. Series "of the stay" have one value an hour from arrival. */
export interface StayPlan {
  readonly climate: Climate;
  readonly trip: Trip;
  readonly hours: number;
  /** calendar days that the stay touches */
  readonly days: number;
  readonly firstDayOfYear: number;
  readonly meanClearness: Float64Array;
  /** by calendar hour from midnight of the day of arrival [°C] */
  readonly calendarAir_C: Float64Array;
  /** of the stay [°C] */
  readonly air_C: Float64Array;
  /** air around a fridge, of the stay [°C] */
  readonly bay_C: Float64Array;
  /** share of the sun's output left by shade while camped, of the stay */
  readonly kept: Float64Array;
  /** shares of each hour of the trip, summing to 1 */
  readonly parts: { readonly parked: Float64Array; readonly driving: Float64Array; readonly mains: Float64Array };
  readonly outside_C: number;
  /** planes by tilt and azimuth, filled as setups ask for them */
  readonly planes: Map<string, LitPlane>;
}

/**
 * @param horizon_days how far runs look, 1 to 366, and never less than the trip's nights
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function planStay(climate: Climate, trip: Trip, horizon_days: number): StayPlan {
  mustLie("horizon_days", horizon_days, 1, 366);
  mustLie("nights", trip.nights, 1, horizon_days);
  mustLie("bayOffset_C", trip.bayOffset_C, -20, 40);
  const hours = Math.round(horizon_days * 24);
  const days = Math.ceil((arrivalHour + hours) / 24);
  const firstDayOfYear = dayOfYear(trip.month, trip.day);
  const calendarAir_C = hourlyAir_C(climate, firstDayOfYear, days);
  const air_C = calendarAir_C.subarray(arrivalHour, arrivalHour + hours);
  return {
    climate,
    trip,
    hours,
    days,
    firstDayOfYear,
    meanClearness: meanClearnessByDay(climate, firstDayOfYear, days),
    calendarAir_C,
    air_C,
    bay_C: air_C.map((air) => air + trip.bayOffset_C),
    kept: Float64Array.from({ length: hours }, (_, i) => keptByShade(trip.shade, arrivalHour + i)),
    parts: partsOfTrip(trip, hours),
    outside_C: meanAir_C(climate, trip.month),
    planes: new Map(),
  };
}

function keptByShade(shade: readonly ShadeWindow[], start_h: number): number {
  return shade.reduce((kept, { from, to, lost }) => kept * (1 - lost * hourInWindow(from, to, start_h)), 1);
}

/** Days n, 2n, … after arrival, inside the hours of the stay. A drive ends with the day it departs on. */
function partsOfTrip({ drives, mains }: Trip, hours: number): StayPlan["parts"] {
  const driving = new Float64Array(hours);
  const onMains = new Float64Array(hours);
  const lastDay = Math.ceil((arrivalHour + hours) / 24);
  if (drives !== null) {
    for (let day = drives.everyNights; day <= lastDay; day += drives.everyNights) {
      const from_h = day * 24 + drives.departs;
      addSpan(driving, from_h, Math.min(from_h + drives.hours, (day + 1) * 24));
    }
  }
  if (mains !== null) {
    for (let day = mains.everyNights; day <= lastDay; day += mains.everyNights) {
      addSpan(onMains, day * 24 + mains.from, day * 24 + mains.from + mains.hours);
    }
  }
  const held = onMains.map((share, i) => Math.min(1, share) * (1 - driving[i]!));
  return { driving, mains: held, parked: driving.map((share, i) => Math.max(0, 1 - share - held[i]!)) };
}

function addSpan(shares: Float64Array, from_h: number, to_h: number): void {
  const last = Math.min(shares.length, Math.ceil(to_h - arrivalHour));
  for (let i = Math.max(0, Math.floor(from_h - arrivalHour)); i < last; i++) {
    shares[i] = Math.min(1, shares[i]! + hourInSpan(from_h, to_h, i + arrivalHour));
  }
}

/** The plane of a tilt and azimuth, made once for all setups and skies. */
export function planeOf(plan: StayPlan, tilt_deg: number, azimuth_deg: number): LitPlane {
  const key = tilt_deg === 0 ? "flat" : `${tilt_deg}/${azimuth_deg}`;
  const known = plan.planes.get(key);
  if (known !== undefined) return known;
  const geometry = planeGeometry(plan.climate, plan.firstDayOfYear, plan.days, tilt_deg, azimuth_deg);
  const made = { geometry, light_W_m2: new Float64Array(plan.days * 24) };
  plan.planes.set(key, made);
  return made;
}

/** Puts the light of one sky on every plane that the setups have asked for. */
export function shine(plan: StayPlan, clearness: Float64Array): void {
  for (const { geometry, light_W_m2 } of plan.planes.values()) irradiate(geometry, clearness, light_W_m2);
}
