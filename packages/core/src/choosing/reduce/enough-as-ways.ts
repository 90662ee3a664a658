import type { Draft, DraftNeed } from './draft.ts';

/** Above this many ways the sum is kept as a sum. */
const MOST_WAYS = 12;

/**
 * A need counted in units is met exactly when the carried pieces include one of the minimal subsets that reach the
 * units. When there are few such subsets they are written as ways: same meaning, but no integer variable, and it can be
 * shared, compared and merged like any other need.
 */
export function writeEnoughAsWays(draft: Draft, n: number): void {
  const need = draft.needs[n];
  if (need?.kind !== 'enough') return;
  const from = [...need.from].sort((a, b) => b.units - a.units);
  const rest = new Array<number>(from.length + 1).fill(0);
  for (let i = from.length - 1; i >= 0; i--) rest[i] = (rest[i + 1] ?? 0) + (from[i]?.units ?? 0);

  const ways: number[][] = [];
  // Largest first: a subset whose last piece completes it is minimal, because every other member is at least as large.
  const extend = (i: number, missing: number, chosen: readonly number[]): boolean => {
    if (missing <= 0) return ways.push([...chosen].sort((a, b) => a - b)) <= MOST_WAYS;
    const next = from[i];
    if (!next || (rest[i] ?? 0) < missing) return true;
    return extend(i + 1, missing - next.units, [...chosen, next.piece]) && extend(i + 1, missing, chosen);
  };
  if (!extend(0, need.units, [])) return;
  draft.needs[n] = { kind: 'any', ways } satisfies DraftNeed;
  draft.changes++;
}
