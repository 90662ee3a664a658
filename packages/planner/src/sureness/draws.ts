import { gammaQuantile } from '@waymend/core/failing/gamma';
import type { Randomness } from '@waymend/core/simulating/simulate';

/** A group of failures, and the shape of the gamma prior of its rate; the prior's mean is the planned rate. */
export interface GroupPrior {
  readonly id: string;
  readonly shape: number;
}

/** One belief about the rates: by group, how many times the planned one. A group that is not there has the planned rate. */
export type RateDraw = ReadonlyMap<string, number>;

/**
 * Beliefs about the rates, each as likely as the next (M11): rate / planned rate ~ Gamma(shape k, rate k), its mean 1.
 *
 * Drawn as a Latin hypercube: each group's belief is cut into `count` slices of equal chance, and the middle of each slice is
 * met once, so that a few dozen draws have the prior's spread. `together`: the same slice for every group, as when the route
 * is worse than thought in every way at once; else each group has a luck of its own.
 */
export function rateDraws(
  groups: readonly GroupPrior[],
  count: number,
  randomness: Randomness,
  together = false,
): readonly RateDraw[] {
  const columns = groups.map(({ shape }, g) => {
    const values = middles(shape, count);
    return shuffled(count, randomness(together ? 0 : g)).map((slice) => values[slice] ?? 1);
  });
  return Array.from(
    { length: count },
    (_, d) => new Map(groups.map(({ id }, g) => [id, columns[g]?.[d] ?? 1])),
  );
}

/** Kept, because they depend on nothing else and are asked for with every plan. */
const known = new Map<string, readonly number[]>();

/** The middle of each slice of equal chance, ascending. */
function middles(shape: number, count: number): readonly number[] {
  const key = `${shape} ${count}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const values = Array.from({ length: count }, (_, n) => gammaQuantile(shape, (n + 0.5) / count) / shape);
  if (known.size < MOST_KEPT) known.set(key, values);
  return values;
}

const MOST_KEPT = 64;

/** 0 to count - 1 in an order of chance (Fisher and Yates). */
function shuffled(count: number, chance: () => number): number[] {
  const order = Array.from({ length: count }, (_, n) => n);
  for (let n = count - 1; n > 0; n--) {
    const other = Math.floor(chance() * (n + 1));
    const kept = order[n] ?? 0;
    order[n] = order[other] ?? 0;
    order[other] = kept;
  }
  return order;
}
