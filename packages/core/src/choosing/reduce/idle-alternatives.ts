import { sortedDistinct } from '../sorted.ts';
import { addNeed } from './draft.ts';
import type { Atom, Draft } from './draft.ts';
import type { Implications } from './implied.ts';

/**
 * Alternatives that are idle where they stand. Way W of need n asks for the smaller need m. Where W with m written out by
 * its way V would hold or imply all of another way U of n, meeting n through V is no more than meeting it through U: in W, m may do
 * without V. (A bar with "the big wrench or an extension", or the big wrench: here the first big wrench is idle.) W then
 * asks for a need of its own, m less V; other ways go on asking for m.
 *
 * The choices that meet n are the same. What is gained: the relaxation can no longer meet n by half of V's pieces through U
 * and half through W. If nothing of m is left, W goes; if one way is left, it is written out.
 */
export function dropIdleAlternatives(
  draft: Draft,
  n: number,
  seen: ReadonlyMap<string, Atom>,
  implications: Implications,
): void {
  const need = draft.needs[n];
  if (need?.kind !== 'any' || need.ways.length < 2) return;
  for (let at = 0; at < need.ways.length; at++) {
    const way = need.ways[at];
    for (const m of way ?? []) {
      const smaller = m < draft.pieceCount ? undefined : draft.needs[m - draft.pieceCount];
      if (!way || smaller?.kind !== 'any') continue;
      const rest = way.filter((atom) => atom !== m);
      const others = need.ways.filter((_, i) => i !== at);
      const useful = smaller.ways.filter((part) => {
        const written = sortedDistinct([...rest, ...part]);
        return !others.some((other) => implications.allImplyAll(written, other));
      });
      if (useful.length === smaller.ways.length) continue;
      const instead = narrowed(draft, n, useful, seen);
      if (instead === null) continue;
      draft.changes++;
      if (useful.length === 0) need.ways.splice(at, 1);
      else need.ways[at] = sortedDistinct([...rest, ...instead]);
      // What was changed is looked at again from the start.
      at = -1;
      break;
    }
  }
}

/** Atoms that stand for "one of these ways": the way itself, a need that is there already, or a new one. */
function narrowed(
  draft: Draft,
  n: number,
  ways: readonly Atom[][],
  seen: ReadonlyMap<string, Atom>,
): readonly Atom[] | null {
  const [only] = ways;
  if (ways.length <= 1) return only ?? [];
  const same = seen.get(ways.map((way) => way.join(' ')).join('|'));
  if (same !== undefined) return [same];
  const added = addNeed(draft, [...ways], n);
  return added === null ? null : [added];
}
