/** Poisson sums in fixed point of 700 binary places: an oracle whose own error is far below a double's. */
const PLACES = 700n;
const ONE = 1n << PLACES;

export interface ExactPoisson {
  /** P(X <= s), P(X > s) and -ln P(X <= s), each right to a few units of a double's last place. */
  readonly within: (s: number) => number;
  readonly beyond: (s: number) => number;
  readonly shortfall: (s: number) => number;
  /** E(X - s)+. */
  readonly shortage: (s: number) => number;
}

/** @param mean Above 0, at most 300; its double value is taken as exact. */
export function exactPoisson(mean: number): ExactPoisson {
  const lambda = fixed(mean);
  // Terms lambda^k / k!, until they vanish; their sum is e^lambda.
  const terms: bigint[] = [];
  for (let term = ONE, k = 1n; term > 0n; k++) {
    terms.push(term);
    term = (term * lambda) / (ONE * k);
  }
  const whole = terms.reduce((sum, term) => sum + term, 0n);
  const probability = (from: number, to: number): number =>
    double((terms.slice(from, to).reduce((sum, term) => sum + term, 0n) * ONE) / whole);
  const within = (s: number): number => probability(0, s + 1);
  const beyond = (s: number): number => probability(s + 1, terms.length);
  return {
    within,
    beyond,
    shortfall: (s) => (beyond(s) < 0.5 ? -Math.log1p(-beyond(s)) : -Math.log(within(s))),
    shortage: (s) =>
      double((terms.reduce((sum, term, k) => (k > s ? sum + term * BigInt(k - s) : sum), 0n) * ONE) / whole),
  };
}

/** Exact: a double is a whole number times a power of two. */
function fixed(value: number): bigint {
  let places = 0n;
  let scaled = value;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    places++;
  }
  return BigInt(scaled) << (PLACES - places);
}

/** Nearest double, but for the last place. */
function double(value: bigint): number {
  if (value <= 0n) return 0;
  const drop = Math.max(0, value.toString(2).length - 64);
  return Number(value >> BigInt(drop)) * 2 ** (drop - Number(PLACES));
}
