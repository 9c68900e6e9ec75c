/** A figure to a hundredth, for words: lengths in feet and gauges come as long fractions. */
export const hundredth = (value: number): number => Math.round(value * 100) / 100;
