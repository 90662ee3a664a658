/** A share with the ends of its interval, all 0..1. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Wilson's score interval for a share p seen in n trials (Wilson 1927; NIST/SEMATECH e-Handbook of Statistical Methods,
 * 7.2.4.1; recalled, not re-read). `n` may be an effective number of trials and need not be whole.
 *
 * @param z Standard normal quantile: 1.959964 for 95 %.
 */
export function wilson(p: number, n: number, z = 1.959963984540054): Interval {
  if (!(n > 0)) return { low: 0, high: 1 };
  const z2 = z * z;
  const centre = (p + z2 / (2 * n)) / (1 + z2 / n);
  const half = (z / (1 + z2 / n)) * Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n));
  return { low: Math.max(0, centre - half), high: Math.min(1, centre + half) };
}
