/** Refuses NaN and anything outside [low, high], naming the field, what was given and what is accepted. */
export function mustLie(name: string, given: number, low: number, high: number): void {
  if (!(given >= low && given <= high)) throw new RangeError(`${name} must be ${low} to ${high}, got ${given}`);
}

/** Refuses what is not a whole number in [low, high]. */
export function mustBeWhole(name: string, given: number, low: number, high: number): void {
  if (!(Number.isInteger(given) && given >= low && given <= high)) {
    throw new RangeError(`${name} must be a whole number from ${low} to ${high}, got ${given}`);
  }
}

/** Refuses a list of another length. */
export function mustHold(name: string, list: ArrayLike<number>, length: number): void {
  if (list.length !== length) throw new RangeError(`${name} must hold ${length} values, got ${list.length}`);
}

/** Refuses a list with a value that is NaN or outside [low, high], naming the first such. */
export function mustAllLie(name: string, list: ArrayLike<number>, low: number, high: number): void {
  for (let i = 0; i < list.length; i++) {
    const given = list[i] ?? NaN;
    if (!(given >= low && given <= high)) mustLie(`${name}[${i}]`, given, low, high); // names it only where it must
  }
}

/** Refuses what is not in a short list. */
export function mustBeOneOf<T extends string | number>(name: string, given: T, accepted: readonly T[]): void {
  if (!accepted.includes(given)) throw new RangeError(`${name} must be one of ${accepted.join(", ")}, got ${given}`);
}
