import { exp } from "./elementary.ts";

export const ROOT_TWO_PI = 2.5066282746310002;

/** Density of the standard normal distribution at x. */
export const normalDensity = (x: number): number => exp(-0.5 * x * x) / ROOT_TWO_PI;

/**
 * Probability that a standard normal variable is at most x.
 * Source: J. F. Hart and others, Computer Approximations (1968), algorithm 5666, in the form of G. West,
 * "Better approximations to cumulative normal functions" (2005) [coefficients from memory; checked in
 * reference/ against printed tables and a statistics package]. Absolute error below 1e-14.
 */
export const normalCumulative = (x: number): number => cumulativeFrom(x, exp(-0.5 * x * x));

/** The same, where exp(-x²/2) is known already. */
export function cumulativeFrom(x: number, tail: number): number {
  const a = Math.abs(x);
  if (a > 37) return x > 0 ? 1 : 0;
  let lower: number;
  if (a < 7.07106781186547) {
    let top = 3.52624965998911e-2 * a + 0.700383064443688;
    top = top * a + 6.37396220353165;
    top = top * a + 33.912866078383;
    top = top * a + 112.079291497871;
    top = top * a + 221.213596169931;
    top = top * a + 220.206867912376;
    let bottom = 8.83883476483184e-2 * a + 1.75566716318264;
    bottom = bottom * a + 16.064177579207;
    bottom = bottom * a + 86.7807322029461;
    bottom = bottom * a + 296.564248779674;
    bottom = bottom * a + 637.333633378831;
    bottom = bottom * a + 793.826512519948;
    bottom = bottom * a + 440.413735824752;
    lower = (tail * top) / bottom;
  } else {
    lower = tail / (a + 1 / (a + 2 / (a + 3 / (a + 4 / (a + 0.65))))) / ROOT_TWO_PI;
  }
  return x > 0 ? 1 - lower : lower;
}
