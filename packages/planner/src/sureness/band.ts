import type { RateDraw } from './draws.ts';

/** How far a chance may be off: 90 of 100 beliefs about the rates lie within. */
export interface Band {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** What a kit leaves open: expected immobilising events that it does not put right, by group of failures. */
export type OpenByGroup = ReadonlyMap<string, number>;

/** Chance of driving home unaided (M5) when the groups' rates are so many times the planned ones. */
export function chanceUnder(open: OpenByGroup, draw: RateDraw): number {
  let loss = 0;
  for (const [group, expected] of open) loss += expected * (draw.get(group) ?? 1);
  return Math.exp(-loss);
}

/**
 * The band of a kit's chance over beliefs about the rates. What the kit can put right is taken at the planned rates: only how
 * often it is asked to moves (spares that run short more often with higher rates are left out of it).
 */
export function bandOf(open: OpenByGroup, draws: readonly RateDraw[]): Band {
  const chances = draws.map((draw) => chanceUnder(open, draw)).sort((a, b) => a - b);
  return { low: quantile(chances, 0.05), median: quantile(chances, 0.5), high: quantile(chances, 0.95) };
}

/** Between the two nearest of the sorted values (type 7 of Hyndman and Fan, 1996; recalled, not re-read). */
function quantile(sorted: readonly number[], p: number): number {
  const at = (sorted.length - 1) * p;
  const below = sorted[Math.floor(at)] ?? Number.NaN;
  const above = sorted[Math.ceil(at)] ?? below;
  return below + (above - below) * (at - Math.floor(at));
}
