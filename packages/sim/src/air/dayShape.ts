/**
 * The day's temperature about its mean, per unit of range, as published: lowest near 5:40, highest near 15:10.
 * Source: Erbs, Klein & Beckman (1983), Estimation of degree-days and ambient temperature bin data from monthly-average
 * temperatures, ASHRAE Journal 25(6):60.
 *
 * @param solarHour any turn; 12 is solar noon [h]
 * @returns -0.4545 to 0.5251
 */
export function erbsShape(solarHour: number): number {
  const t = (2 * Math.PI * (solarHour - 1)) / 24;
  return (
    0.4632 * Math.cos(t - 3.805) +
    0.0984 * Math.cos(2 * t - 0.36) +
    0.0168 * Math.cos(3 * t - 0.822) +
    0.0138 * Math.cos(4 * t - 3.513)
  );
}

/** The same stretched to run from 0 at the day's lowest to 1 at its highest (the published shape reaches 0.98 of a range). */
export function dayShape(solarHour: number): number {
  return (erbsShape(solarHour) + 0.454502) / 0.979621;
}
