import { within } from './draft.ts';
import type { DraftNeed } from './draft.ts';

/**
 * Only minimal ways matter: when way W holds all of way V, then W complete implies V complete, so the need is met by V
 * already. Equal ways are kept once. The set of choices that meet the need is unchanged.
 */
export function keepMinimalWays(need: DraftNeed): void {
  if (need.kind !== 'any' || need.ways.length < 2) return;
  const bySize = [...need.ways].sort((a, b) => a.length - b.length);
  const kept: number[][] = [];
  for (const way of bySize) {
    if (!kept.some((smaller) => within(smaller, way))) kept.push(way);
  }
  need.ways = kept.sort(byEntries);
}

/** A fixed order, so that equal needs look equal. */
function byEntries(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length && i < b.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}
