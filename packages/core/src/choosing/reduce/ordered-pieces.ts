import { OPEN } from './draft.ts';
import type { Draft } from './draft.ts';
import { occurrences, replaceable } from './occurrences.ts';
import type { Occurrence } from './occurrences.ts';

/** The second piece comes only if the first does. */
export type OrderedPair = readonly [first: number, second: number];

/** Comparing every pair would take longer than it saves. */
const MOST_COMPARED = 8;

/**
 * Symmetry. Of copies that can serve for each other, the first may be asked to come first.
 *
 * Say i may give way to j when, in every choice that carries i but not j, exchanging them keeps every need and gain and
 * adds nothing to grams, cents, pieces or any limit: every way (option) that names i and not j has a rival within (itself
 * without i) and j, i counts for no more units than j, and j weighs no more anywhere. Rank pieces by (grams, index) and
 * ask x(i) <= x(j) for pairs where j ranks before i. Take an optimum whose ranks add up to the least; if it broke one
 * of these rows, the exchange would give an optimum of lower sum. So one optimum keeps all the rows at once.
 */
export function orderedPairs(draft: Draft): OrderedPair[] {
  const { of, units } = occurrences(draft);
  const groups = new Map<string, number[]>();
  draft.pieces.forEach((piece, p) => {
    if (draft.state[p] !== OPEN || piece.supply !== null || piece.wholes.length > 0) return;
    const named = of[p] ?? [];
    const counted = [...(units[p]?.keys() ?? [])].join(' ');
    if (named.length === 0 && counted === '') return;
    // Copies of one thing weigh the same and stand in as many lists.
    const key = `${piece.grams} ${piece.count} ${named.length} ${counted}`;
    groups.set(key, [...(groups.get(key) ?? []), p]);
  });
  const pairs: OrderedPair[] = [];
  for (const group of groups.values()) {
    group.forEach((i, at) => {
      // The nearest earlier one is enough: order is handed down the line.
      for (let k = at - 1; k >= Math.max(0, at - MOST_COMPARED); k--) {
        const j = group[k] ?? 0;
        if (!givesWay(draft, of[i] ?? [], units, i, j)) continue;
        pairs.push([j, i]);
        return;
      }
    });
  }
  return pairs;
}

function givesWay(
  draft: Draft,
  named: readonly Occurrence[],
  units: readonly ReadonlyMap<number, number>[],
  i: number,
  j: number,
): boolean {
  const piece = draft.pieces[i];
  const instead = draft.pieces[j];
  if (!piece || !instead || instead.cents > piece.cents) return false;
  if (!instead.weights.every((w, row) => w <= (piece.weights[row] ?? 0) || !draft.limits[row]?.live))
    return false;
  for (const [n, ofI] of units[i] ?? []) if ((units[j]?.get(n) ?? 0) < ofI) return false;
  return named.every((one) => one.atoms.includes(j) || replaceable(one, i, j));
}
