/**
 * -ln F(s; mean) with F the Poisson distribution function: what it costs, in nepers, to have `s` and no more where `mean` are
 * wanted on average. `s` a whole number of at least 0, `mean` at least 0.
 */
export function shortfallNepers(s: number, mean: number): number {
  if (mean <= 0) return 0;
  if (s + 1 > mean) {
    // The upper tail, summed directly: small numbers keep their digits.
    let term = Math.exp(-mean);
    for (let k = 1; k <= s + 1; k++) term *= mean / k;
    let tail = 0;
    for (let k = s + 2; term > tail * 1e-17; k++) {
      tail += term;
      term *= mean / k;
    }
    return -Math.log1p(-tail);
  }
  let term = 1;
  let sum = 1;
  for (let k = 1; k <= s; k++) {
    term *= mean / k;
    sum += term;
  }
  return mean - Math.log(sum);
}

/**
 * Share of a repair's worth that is lost to running out, 0 to 1: kappa = -ln F(s; D) / D (M5). Exact for a stock with one user
 * whose demand is D; for several users the chord of a concave function, and so never less than what is really lost.
 */
export function kappa(s: number, demand: number): number {
  if (s <= 0) return 1;
  if (demand <= 0) return 0;
  return Math.min(1, Math.max(0, shortfallNepers(s, demand) / demand));
}
