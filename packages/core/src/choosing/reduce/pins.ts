import { IN, OPEN, OUT, dropBundle, leaveHome, takeAlong } from './draft.ts';
import type { Draft } from './draft.ts';

/**
 * Pieces whose fate is not a choice.
 *
 * Pinned `never`: out, by definition of the pin. Pinned `always`: in. Neither owned nor sold, alone or in a set that can
 * still come: no feasible choice carries it, so out. A set that nothing left needs in order to be had brings nothing
 * but weight and price, so it stays (whole sets keep their members' fate tied to theirs and are left alone).
 * A set owned and carried loose costs nothing to have at hand, so its members are there for the taking. Every feasible
 * choice keeps its loss, grams, pieces and cents.
 */
export function settlePins(draft: Draft): void {
  draft.problem.pieces.forEach((piece, p) => {
    if (piece.pin === 'never') leaveHome(draft, p);
  });
  draft.bundles.forEach((bundle, b) => {
    const free =
      draft.problem.bundles[b]?.owned === true && !bundle.whole && bundle.weights.every((w) => w === 0);
    if (!free || bundle.state !== OPEN) return;
    for (const piece of draft.pieces) {
      if (!piece.supply?.bundles.includes(b)) continue;
      piece.supply = null;
      piece.raw.bundles.push(b);
      draft.changes++;
    }
    dropBundle(draft, b);
  });
  dropUnobtainable(draft);
  draft.problem.pieces.forEach((piece, p) => {
    if (piece.pin !== 'always') return;
    if (draft.state[p] === OUT) draft.impossible.pieces.push(p);
    else takeAlong(draft, p);
  });
}

/** Repeated in every round: what cannot be had goes, and so does a set nobody needs. */
export function dropUnobtainable(draft: Draft): void {
  draft.pieces.forEach((piece, p) => {
    if (!piece.supply || piece.supply.buy || piece.supply.bundles.length > 0) return;
    if (draft.state[p] === OPEN) leaveHome(draft, p);
    else if (draft.state[p] === IN && !draft.impossible.pieces.includes(p)) draft.impossible.pieces.push(p);
  });
  const wanted = new Set<number>();
  draft.pieces.forEach((piece, p) => {
    if (draft.state[p] !== OPEN && draft.state[p] !== IN) return;
    for (const b of piece.supply?.bundles ?? []) wanted.add(b);
    for (const b of piece.wholes) wanted.add(b);
  });
  draft.bundles.forEach((bundle, b) => {
    if (bundle.state === OPEN && !wanted.has(b)) dropBundle(draft, b);
  });
}
