import { OPEN } from './draft.ts';
import type { Atom, Draft, DraftNeed } from './draft.ts';
import { occurrences, replaceable } from './occurrences.ts';
import type { Occurrence } from './occurrences.ts';

/**
 * Second choices. Two pieces that are only ever needed together, or one for the other, keep each other from being left
 * out (a second wrench to hold the nut, M3), but of the two the better one comes first.
 *
 * Say i gives way to j when exchanging them in any choice that carries i but not j keeps every need and gain and adds
 * nothing to grams, cents, pieces or any limit: every way (option) that names i and not j has a rival (of no less gain)
 * within itself with j for i, i counts for no more units than j anywhere, j is there for the taking and weighs, costs and
 * counts no more, and i is tied to no whole set. Rank pieces by (grams, cents, index) and look at all pairs (i, j) where i gives way to j and j ranks
 * before i. Of the optima take one whose ranks add up to the least. It carries no i without its j, for the exchange
 * would give an optimum of a lesser sum. In such a choice a way that names i but not j is never missed: when it is complete, so is
 * its rival, which names lower ranks; should that be left out too, so is the rival's own rival, and ranks cannot fall for
 * ever. So all ways and options that name some i without its j go at once. A count that the pieces before i reach without it
 * does not need i either: where i comes, they are all there (of five equal wrenches a pair needs two). This
 * optimum keeps its value, the value of no choice becomes better than it truly is, and what remains is a problem like any other.
 *
 * What is gained: the relaxation cannot carry half of each of two copies any more and count the need as met by both.
 */
export function dropSecondChoices(draft: Draft): void {
  const { of, units } = occurrences(draft);
  /** By piece: those that come before it. */
  const firsts = new Map<number, number[]>();
  draft.pieces.forEach((piece, i) => {
    if (draft.state[i] !== OPEN || piece.wholes.length > 0) return;
    const named = of[i] ?? [];
    const found = candidates(draft, named, units[i], i).filter(
      (j) => ranksBefore(draft, j, i) && givesWay(named, units, i, j),
    );
    if (found.length > 0) firsts.set(i, found);
  });
  if (firsts.size === 0) return;
  const idle = (atoms: readonly Atom[]): boolean =>
    atoms.some((atom) => firsts.get(atom)?.some((first) => !atoms.includes(first)) === true);
  for (const need of draft.needs) {
    if (need.kind === 'enough') {
      dropThirdChoices(draft, need, firsts);
      continue;
    }
    const ways = need.ways.filter((way) => !idle(way));
    draft.changes += need.ways.length - ways.length;
    need.ways = ways;
  }
  draft.events = draft.events.map((event) => {
    const kept = event.filter(({ atoms }) => !idle(atoms));
    draft.changes += event.length - kept.length;
    return kept;
  });
}

function dropThirdChoices(
  draft: Draft,
  need: Extract<DraftNeed, { kind: 'enough' }>,
  firsts: ReadonlyMap<number, readonly number[]>,
): void {
  const given = new Map(need.from.map(({ piece, units }) => [piece, units]));
  const reached = (i: number): boolean =>
    (firsts.get(i) ?? []).reduce((sum, j) => sum + (given.get(j) ?? 0), 0) >= need.units;
  const from = need.from.filter(({ piece }) => !reached(piece));
  draft.changes += need.from.length - from.length;
  need.from = from;
}

/** Pieces that could come before i in one of its lists: the count with fewest pieces, or the list with fewest rivals. */
function candidates(
  draft: Draft,
  named: readonly Occurrence[],
  counted: ReadonlyMap<number, number> | undefined,
  i: number,
): number[] {
  const { pieceCount } = draft;
  let parts: number[] | null = null;
  for (const n of counted?.keys() ?? []) {
    const need = draft.needs[n];
    if (need?.kind !== 'enough' || (parts && parts.length <= need.from.length)) continue;
    parts = need.from.map(({ piece }) => piece);
  }
  if (parts) return parts.filter((j) => j !== i);
  const [one, ...others] = named;
  if (!one) return [];
  const fewest = others.reduce((a, b) => (b.rivals.length < a.rivals.length ? b : a), one);
  const found = new Set(fewest.atoms);
  for (const rival of fewest.rivals) {
    const extra = rival.filter((atom) => !fewest.atoms.includes(atom));
    const [only] = extra;
    if (extra.length === 1 && only !== undefined && !rival.includes(i)) found.add(only);
  }
  found.delete(i);
  return [...found].filter((atom) => atom < pieceCount);
}

function ranksBefore(draft: Draft, j: number, i: number): boolean {
  const instead = draft.pieces[j];
  const piece = draft.pieces[i];
  if (!instead || !piece || draft.state[j] !== OPEN) return false;
  return (
    instead.supply === null &&
    instead.wholes.length === 0 &&
    (instead.grams - piece.grams || instead.cents - piece.cents || j - i) < 0 &&
    instead.count <= piece.count &&
    instead.cents <= piece.cents &&
    instead.weights.every((w, row) => w <= (piece.weights[row] ?? 0) || !draft.limits[row]?.live)
  );
}

function givesWay(
  named: readonly Occurrence[],
  units: readonly ReadonlyMap<number, number>[],
  i: number,
  j: number,
): boolean {
  for (const [n, ofI] of units[i] ?? []) if ((units[j]?.get(n) ?? 0) < ofI) return false;
  return named.every((list) => list.atoms.includes(j) || replaceable(list, i, j));
}
