import { IN, OPEN, isPinnedOn } from './draft.ts';
import type { Draft } from './draft.ts';

/** Least and greatest use of each limit by everything still open, purchases and sets included. */
export function rangeOfUse(draft: Draft): { readonly least: number[]; readonly most: number[] } {
  const least = draft.limits.map(() => 0);
  const most = draft.limits.map(() => 0);
  const add = (weights: readonly number[] | undefined, fixed: boolean): void => {
    weights?.forEach((weight, row) => {
      if (fixed || weight < 0) least[row] = (least[row] ?? 0) + weight;
      if (fixed || weight > 0) most[row] = (most[row] ?? 0) + weight;
    });
  };
  draft.pieces.forEach((piece, p) => {
    const pinned = isPinnedOn(draft, p);
    if (draft.state[p] !== OPEN && !pinned) return;
    add(piece.weights, pinned);
    add(piece.supply?.buy?.weights, false);
  });
  for (const bundle of draft.bundles)
    if (bundle.state === OPEN || bundle.state === IN) add(bundle.weights, false);
  return { least, most };
}

/** A limit that holds even with everything aboard limits nothing and goes. */
export function dropSlackLimits(draft: Draft): void {
  const { most } = rangeOfUse(draft);
  draft.limits.forEach((limit, row) => {
    if (!limit.live || (most[row] ?? 0) > limit.room) return;
    limit.live = false;
    draft.changes++;
  });
}
