import { OPEN, leaveHome } from './draft.ts';
import type { Draft } from './draft.ts';
import { occurrences, replaceable } from './occurrences.ts';
import type { Occurrence } from './occurrences.ts';

/**
 * Column domination. Piece i stays home when a piece j can take its place everywhere at no cost:
 * - for every way W of a need that names i, some way V of that need lies within (W without i) and j; likewise for every
 *   option, among the options of its event that gain at least as much;
 * - i counts towards no 'enough' need and is tied to no set;
 * - j is there for the taking, weighs no more in grams, cents and every limit, and stands for no more pieces; i's weights
 *   are at least 0.
 * Take a feasible choice S with i, and let S' be S without i and with j. A way or option complete in S that does not name i
 * is complete in S'; one that does has its V complete in S'. So every need met in S is met in S', no event loses gain,
 * and no grams, cents, pieces or limit grow: if j was in S, i's weights (at least 0) are saved; if not, j's replace i's.
 * Hence some optimum leaves i, whichever of loss, grams, pieces and cents come first.
 * Pieces are taken out one at a time, each against what is left, so that of two equal ones the first stays. A way that names
 * both i and j (two wrenches on one bolt, M3) needs a V without i that j alone completes, so a second copy is not lost.
 */
export function dropDominatedPieces(draft: Draft): void {
  const { of, units } = occurrences(draft);
  // Heaviest first, and of equals the last, so that what stays is the lightest and first.
  const order = draft.pieces
    .map((_, p) => p)
    .filter((p) => draft.state[p] === OPEN)
    .sort((a, b) => (draft.pieces[b]?.grams ?? 0) - (draft.pieces[a]?.grams ?? 0) || b - a);
  // Lists that name a piece already taken out are never complete any more and count for nothing.
  const gone = new Uint8Array(draft.pieceCount + draft.needs.length);
  for (const i of order) {
    const named = (of[i] ?? []).filter(({ atoms }) => !atoms.some((atom) => gone[atom] === 1));
    if (named.length === 0 || (units[i]?.size ?? 0) > 0 || !mayLeave(draft, i)) continue;
    const candidates = replacements(draft, named, i);
    if (!candidates.some((j) => noWorse(draft, j, i) && named.every((one) => replaceable(one, i, j, gone))))
      continue;
    leaveHome(draft, i);
    gone[i] = 1;
  }
}

function mayLeave(draft: Draft, i: number): boolean {
  const piece = draft.pieces[i];
  return piece?.wholes.length === 0 && piece.weights.every((w, row) => w >= 0 || !draft.limits[row]?.live);
}

/** Pieces that could stand in for i in the list of it with fewest rivals. */
function replacements(draft: Draft, named: readonly Occurrence[], i: number): number[] {
  const fewest = named.reduce((a, b) => (b.rivals.length < a.rivals.length ? b : a));
  const found = new Set<number>();
  for (const rival of fewest.rivals) {
    const extra = rival.filter((atom) => atom === i || !fewest.atoms.includes(atom));
    const [one] = extra;
    if (extra.length === 1 && one !== undefined && one !== i && one < draft.pieceCount) found.add(one);
  }
  return [...found];
}

function noWorse(draft: Draft, j: number, i: number): boolean {
  const instead = draft.pieces[j];
  const piece = draft.pieces[i];
  if (!instead || !piece || draft.state[j] !== OPEN) return false;
  return (
    instead.supply === null &&
    instead.wholes.length === 0 &&
    instead.grams <= piece.grams &&
    instead.count <= piece.count &&
    instead.cents <= piece.cents &&
    instead.weights.every((w, row) => w <= (piece.weights[row] ?? 0) || !draft.limits[row]?.live)
  );
}
