/** A place on the way from the source to the bank, and the volts there while charging. */
export interface RunPoint {
  readonly label: string;
  readonly volts: number;
  /** what lies between the place before and this one: "6 m of 6 mm²" */
  readonly piece?: string | undefined;
}

/** Volts down the charge run, from the source to the bank. */
export interface RunPicture {
  readonly points: readonly RunPoint[];
  /** amps into the bank */
  readonly amps: number;
  /** what holds them back, in words: "the plug's pins, 15 A" */
  readonly limitedBy: string;
  /** volts the converter needs at its input */
  readonly minimum_V?: number | undefined;
}
