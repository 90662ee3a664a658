/**
 * -ln F(s; mean) of the Poisson distribution, in nepers: what is lost by having `s` and no more where `mean` are wanted on
 * average. The series is summed without its leading 1, so that small means keep their digits.
 */
export function shortfall(s: number, mean: number): number {
  if (mean <= 0) return 0;
  let term = 1;
  let tail = 0;
  for (let k = 1; k <= s; k++) {
    term *= mean / k;
    tail += term;
  }
  return mean - Math.log1p(tail);
}

/** The part of a job's worth that running out of stock takes (M5): kappa = -ln F(s; D) / D, 0..1. */
export function kappa(s: number, demand: number): number {
  if (s <= 0) return 1;
  if (demand <= 0) return 0;
  return Math.min(1, Math.max(0, shortfall(s, demand) / demand));
}
