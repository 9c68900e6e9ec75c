/** Refuses a quantity that is not a number from `low` to `high`, naming it, what was given and what is accepted. */
export function needWithin(name: string, value: number, low: number, high: number, unit: string): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${name} must be ${low} to ${high} ${unit}, got ${String(value)}`);
  }
}
