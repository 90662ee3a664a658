import { within } from './draft.ts';
import type { DraftNeed } from './draft.ts';
import type { Implications } from './implied.ts';

/**
 * Only minimal ways matter: when way W holds all of way V, or implies it, then W complete means V complete, and the need is
 * met by V already. Taken out one at a time, so of ways that imply each other one stays. The set of choices that meet
 * the need is unchanged.
 */
export function keepMinimalWays(need: DraftNeed, implications: Implications): void {
  if (need.kind !== 'any') return;
  const { ways } = need;
  // Largest first: a way that only names more than another is the one to go.
  ways.sort((a, b) => b.length - a.length);
  for (let i = 0; i < ways.length; i++) {
    const way = ways[i] ?? [];
    const idle = ways.some(
      (other, j) => j !== i && (within(other, way) || implications.allImplyAll(way, other)),
    );
    if (idle) ways.splice(i--, 1);
  }
  ways.sort(byEntries);
}

/** A fixed order, so that equal needs look equal. */
function byEntries(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length && i < b.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}
