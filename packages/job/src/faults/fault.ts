/** Something in a job that is not as it must be, in words a person can act on. */
export interface Fault {
  /** where, as in "setups[0].bank.capacity_Ah"; "" is the file itself */
  readonly path: string;
  /** what stands there, short and on one line */
  readonly given: string;
  /** what may stand there */
  readonly accepted: string;
  /** the whole of it as one sentence */
  readonly message: string;
  /** line in the file, from 1, where it was read from text */
  readonly line?: number;
}

export type Keys = readonly (string | number)[];

/** A fault before its place in the file is known. */
export interface Found {
  readonly keys: Keys;
  readonly given: string;
  readonly accepted: string;
  /** said instead of "given …; accepted …" where that reads better */
  readonly says?: string;
  /** other fields that the fault is worked out from: where one of them is at fault itself, this says nothing sound */
  readonly restsOn?: readonly Keys[];
}
