/** One clock hour of a representative day [Wh]. */
export interface DayHour {
  readonly in: {
    readonly sun_Wh: number;
    readonly road_Wh: number;
    readonly mains_Wh: number;
    /** what the array could have given and nothing took */
    readonly sunUnused_Wh: number;
  };
  readonly out: readonly { readonly id: string; readonly name: string; readonly Wh: number }[];
}

/** A representative day by the clock. */
export interface DayPicture {
  /** 24 hours from midnight; hours left off the end count as empty */
  readonly hours: readonly DayHour[];
  /** clock hours of sunset and sunrise; null or left out shades no night */
  readonly dark?: { readonly from_h: number; readonly to_h: number } | null | undefined;
}
