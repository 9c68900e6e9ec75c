import { polynomial } from "./polynomial.ts";

/** Hart (1968), Computer Approximations, function 5666, in the form of West (2005). Constant term first. */
const ABOVE = [
  220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383, 6.37396220353165, 0.700383064443688,
  3.52624965998911e-2,
];
const BELOW = [
  440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674, 86.7807322029461, 16.064177579207,
  1.75566716318264, 8.83883476483184e-2,
];

/**
 * Standard normal distribution: the chance that a standard normal variable is at most x.
 * Source: G. West (2005), Better approximations to cumulative normal functions, Wilmott; after Hart (1968).
 * Absolute error under 1e-14.
 */
export function normalCdf(x: number): number {
  const upper = upperTail(Math.abs(x));
  return x > 0 ? 1 - upper : upper;
}

function upperTail(x: number): number {
  if (x > 37) return 0; // e^(-x²/2) is below the smallest double
  const gauss = Math.exp(-0.5 * x * x);
  if (x < 7.07106781186547) return (gauss * polynomial(x, ABOVE)) / polynomial(x, BELOW);
  const fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
  return gauss / (fraction * 2.506628274631);
}
