/**
 * What may happen on a trip, and what one kit can do about it, for drawn trips (M12). Troubles are independent Poisson
 * streams, so that, given how many failures a trip has, each is of kind t with chance expected(t) / sum, whatever came
 * before: drawing kinds one after the other is walking the trip in time order.
 */
export interface TripLaw {
  /** Expected immobilising events by kind of trouble, all at least 0: the most that any of the kits compared brings about. */
  readonly expected: readonly number[];
}

/** One thing a kit can do against a trouble. */
export interface Answer {
  /** Chance that it restores the vehicle, 0..1 (M4), ample stock granted. */
  readonly chance: number;
  /** What a repair that succeeds uses up: stock by number, units of it. */
  readonly uses: readonly { readonly stock: number; readonly units: number }[];
}

/** A kit as the walk sees it. */
export interface SimulatedKit {
  /** By trouble: its answers, best first. The first one whose stock lasts is tried, once, as M5 counts it. */
  readonly answers: readonly (readonly Answer[])[];
  /** Units aboard at the start, by number of stock. */
  readonly stock: readonly number[];
  /** By trouble: the part of the law's events that happen with this kit aboard, 0..1; a lighter kit wears less (M1, M13). */
  readonly share: readonly number[];
}

/** Chance of n events of a Poisson stream for n = 0, 1, ... until what is left is below `tail`. */
export function poissonWeights(mean: number, tail: number): readonly number[] {
  const weights: number[] = [];
  let term = Math.exp(-mean);
  let left = 1;
  for (let n = 0; ; n++) {
    weights.push(term);
    left -= term;
    // Past the mode the terms fall faster than by half; before it the sum says nothing.
    if (n > mean && (left <= tail || term <= tail / 4)) return weights;
    term *= mean / (n + 1);
  }
}
