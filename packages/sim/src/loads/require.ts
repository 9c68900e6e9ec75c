import { mustAllLie } from "../numeric/must.ts";

/** Refuses zero, negative and non-finite numbers, in words that name the field. */
export function requireAbove(field: string, value: number, low: number): void {
  if (!(value > low && value < Infinity)) throw new RangeError(`${field} must be more than ${low}, got ${value}`);
}

/** Refuses a series of hourly temperatures that is not all between -90 and 120 °C. */
export function requireTemperatures(field: string, series_C: Float64Array): void {
  mustAllLie(field, series_C, -90, 120);
}

/** Refuses a series of shares that are not all between 0 and 1. */
export function requireShares(field: string, series: Float64Array): void {
  mustAllLie(field, series, 0, 1);
}
