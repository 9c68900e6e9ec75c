/**
 * How a month's days spread about their mean clearness: density ∝ e^(γK) between the darkest and the clearest day.
 * Source: Bendt, Collares-Pereira & Rabl (1981), Solar Energy 27:1; Duffie & Beckman, section 2.9.
 */
export interface Bendt {
  readonly least: number;
  readonly most: number;
  /** slope of the density's logarithm; 0 spreads evenly */
  readonly gamma: number;
}

/**
 * Clearness of the darkest day: 0.05 up to a mean of 0.35, rising in a straight line to 0.10 at 0.45 and staying there.
 * Source: 0.05 is the published constant; the rise was fitted by us to twelve daily records, where 0.05 makes the dark
 * days of bright months too dark.
 */
export function leastClearness(mean: number): number {
  return 0.05 + 0.05 * Math.min(1, Math.max(0, (mean - 0.35) / 0.1));
}

/**
 * Clearness of the clearest day. Source: Hollands & Huget (1983), Solar Energy 30:195; Duffie & Beckman, eq. 2.9.6.
 * Taken at a mean clamped to 0.15 to 0.80, outside which the eighth power runs away.
 */
export function mostClearness(mean: number): number {
  const k = Math.min(0.8, Math.max(0.15, mean));
  return 0.6313 + 0.267 * k - 11.9 * (k - 0.75) ** 8;
}

/**
 * Brings a mean 0.01 inside the darkest and the clearest day, where a distribution with that mean exists.
 * The bounds are those of the ends of the range: 0.06 to 0.835.
 */
export function clampMean(mean: number): number {
  return Math.min(mostClearness(0.8) - 0.01, Math.max(leastClearness(0) + 0.01, mean));
}

/**
 * The distribution whose mean is `mean` exactly. γ solves coth x - 1/x = r with x = γ (most - least)/2 and r the mean's
 * place between the middle (0) and the ends (±1), which is the published condition rewritten.
 */
export function bendtOf(mean: number): Bendt {
  return bendtBetween(leastClearness(mean), mostClearness(mean), mean);
}

/** As `bendtOf`, with the ends given; least < mean < most. */
export function bendtBetween(least: number, most: number, mean: number): Bendt {
  if (!(least < mean && mean < most)) {
    throw new RangeError(`mean clearness must lie between ${least} and ${most}, got ${mean}`);
  }
  const width = most - least;
  return { least, most, gamma: (2 * inverseLangevin((2 * mean - least - most) / width)) / width };
}

/**
 * Clearness not exceeded on a share of the days: K(f) = ln[(1-f) e^(γ least) + f e^(γ most)]/γ, arranged so that nothing
 * overflows.
 *
 * @param share 0 to 1
 */
export function bendtQuantile({ least, most, gamma }: Bendt, share: number): number {
  const width = most - least;
  if (Math.abs(gamma) * width < 1e-9) return least + share * width;
  return gamma > 0
    ? Math.max(least, most + Math.log1p((1 - share) * Math.expm1(-gamma * width)) / gamma)
    : Math.min(most, least + Math.log1p(share * Math.expm1(gamma * width)) / gamma);
}

/** x such that coth x - 1/x = r, for |r| < 1: Newton from Cohen's (1991) rational guess. */
function inverseLangevin(r: number): number {
  let x = (r * (3 - r * r)) / (1 - r * r);
  for (let i = 0; i < 20; i++) {
    const step = (langevin(x) - r) / langevinSlope(x);
    x -= step;
    if (Math.abs(step) <= 1e-14 * (1 + Math.abs(x))) break;
  }
  return x;
}

function langevin(x: number): number {
  const xx = x * x;
  if (xx < 0.0025) return (x / 3) * (1 - (xx / 15) * (1 - (2 * xx) / 21)); // the closed form cancels near 0
  return 1 / Math.tanh(x) - 1 / x;
}

function langevinSlope(x: number): number {
  const xx = x * x;
  if (xx < 0.0025) return 1 / 3 - xx / 15 + (2 * xx * xx) / 189;
  return 1 / xx - 1 / Math.sinh(x) ** 2;
}
