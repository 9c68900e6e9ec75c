/** Volts at which 12 V compressor fridges stop and start again, by the setting of their battery protection. */
export const fridgeCutOuts = {
  source: "five compressor-fridge manuals, 12 V",
  standing: "published",
  /** as they leave the factory on the low setting */
  low: { stops_V: 10.4, starts_V: 11.7 },
  /** for a trailer with no battery of its own */
  middle: { stops_V: 11.3, starts_V: 12.5 },
  /** set to spare a starter battery */
  high: { stops_V: 11.7, starts_V: 13.1 },
} as const;
