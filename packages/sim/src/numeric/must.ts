/** Refuses NaN and anything outside [low, high], naming the field, what was given and what is accepted. */
export function mustLie(name: string, given: number, low: number, high: number): void {
  if (!(given >= low && given <= high)) throw new RangeError(`${name} must be ${low} to ${high}, got ${given}`);
}
