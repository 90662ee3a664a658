import { OPEN, leaveHome } from './draft.ts';
import type { Draft } from './draft.ts';
import { occurrences } from './occurrences.ts';

/**
 * A piece that no way, option or count names any more is left at home, unless it takes weight off some limit (a load far
 * aft lifts the front axle) or belongs to a set that comes whole. Leaving it from any choice changes no need and no
 * gain, and adds to no limit, so some optimum leaves it.
 */
export function leaveIdlePieces(draft: Draft): void {
  const { of, units } = occurrences(draft);
  draft.pieces.forEach((piece, p) => {
    if (draft.state[p] !== OPEN || piece.wholes.length > 0) return;
    if ((of[p]?.length ?? 0) > 0 || (units[p]?.size ?? 0) > 0) return;
    if (piece.weights.every((w, row) => w >= 0 || !draft.limits[row]?.live)) leaveHome(draft, p);
  });
}
