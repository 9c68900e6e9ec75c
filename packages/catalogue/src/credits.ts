/** Whose data the catalogue holds. */
export interface Credit {
  readonly id: string;
  readonly text: string;
  readonly licence: string;
  /** the line to print wherever figures from these data are printed */
  readonly printed: string;
}

/** The two sources of climate, with their licences. */
export const credits: readonly Credit[] = [
  {
    id: "nasa-sse-6",
    text: "Global horizontal irradiation, monthly means July 1983 to June 2005 on a 1° grid: NASA Surface meteorology and Solar Energy (SSE) Release 6.0, January 2008. Rounded here to 1/80 of a square root of kWh/m²/day.",
    licence: "NASA data without a marked restriction are CC0",
    printed: "Sunshine: NASA Langley Research Center Atmospheric Science Data Center, SSE Release 6.0",
  },
  {
    id: "dwd-climat",
    text: "Mean daily maximum and minimum air temperature by month, 2,828 stations, means over 2003 to 2021: Deutscher Wetterdienst, CLIMAT reports, open data. Values processed (multi-year means).",
    licence: "GeoNutzV, mapped to CC BY 4.0",
    printed:
      "Temperatures: data basis Deutscher Wetterdienst, CLIMAT reports, values processed (multi-year means), CC BY 4.0",
  },
];
