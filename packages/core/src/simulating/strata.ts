import { poissonWeights } from './trip-law.ts';

/** Trips with this many failures: their share of all trips, and how many of them are drawn. */
export interface Stratum {
  readonly failures: number;
  readonly weight: number;
  readonly trips: number;
}

/** Trips with more failures than are drawn are rarer than this in all; they count as stranded. */
const TAIL = 1e-9;

/**
 * Splits the trips by their number of failures (Poisson), so that chance never decides how many quiet trips are drawn.
 * A trip without a failure needs no drawing. Proportional to weight, the rest to the largest remainders, at least two in
 * each stratum that weighs anything: never a wider interval than drawing all together.
 */
export function strataOf(expected: number, trips: number): readonly Stratum[] {
  const weights = poissonWeights(expected, TAIL);
  const drawn = weights.reduce((sum, w, n) => (n === 0 ? sum : sum + w), 0);
  const wish = weights.map((w, n) => (n === 0 || drawn === 0 ? 0 : (w / drawn) * trips));
  const floor = wish.map(Math.floor);
  const order = wish
    .map((w, n) => ({ n, rest: w - Math.floor(w) }))
    .sort((a, b) => b.rest - a.rest || a.n - b.n);
  let over = trips - floor.reduce((sum, f) => sum + f, 0);
  for (const { n } of order) {
    if (over <= 0) break;
    if (n === 0) continue;
    floor[n] = (floor[n] ?? 0) + 1;
    over -= 1;
  }
  return weights.map((weight, failures) => ({
    failures,
    weight,
    trips: failures === 0 ? 0 : Math.max(2, floor[failures] ?? 0),
  }));
}
