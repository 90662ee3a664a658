import type { KitState } from '@waymend/core/choosing/kit-state';
import type { PieceIndex } from '@waymend/core/choosing/problem';
import type { ScenePiece } from '@waymend/core/repairing/scene';
import type { SwapAnswer } from '../answer/plan-answer.ts';
import type { Reading } from './reading.ts';
import { ownerSaysNever } from './reading.ts';

/** A swap that saves less than this is not worth reading. */
const LEAST_SAVED_GRAMS = 30;

/**
 * For each carried piece, the lightest thing owned or sold singly that, in its place, leaves the kit exactly as good: same
 * loss, same floor. Checked on the whole kit, not by comparing names.
 */
export function lighterSwaps(reading: Reading, state: KitState): readonly SwapAnswer[] {
  const whole = new Set(reading.scene.bundles.filter((b) => b.carry === 'whole').map((b) => b.id));
  // A piece of a set that comes whole comes and goes with it, never alone.
  const alone = (piece: ScenePiece) => !piece.bundles.some((b) => whole.has(b));
  const byGrams = reading.pieces
    .map((piece, index) => ({ piece, index }))
    .filter(
      ({ piece, index }) =>
        state.carried[index] !== 1 &&
        !ownerSaysNever(piece) &&
        (piece.owned ? alone(piece) : piece.cents !== null),
    )
    .sort((a, b) => a.piece.grams - b.piece.grams);
  const swaps: SwapAnswer[] = [];
  for (const index of carriedOf(state)) {
    const piece = reading.pieces[index];
    if (piece === undefined || piece.pin === 'always' || piece.grams <= LEAST_SAVED_GRAMS) continue;
    if (!alone(piece)) continue;
    const { loss, mustOpen } = state;
    state.leave(index);
    // A piece whose going costs nothing is in the kit for a pin or a set, not for its work.
    const matters = state.loss > loss || state.mustOpen > mustOpen;
    const found = matters
      ? byGrams.find(({ piece: other, index: q }) => {
          if (
            other.grams > piece.grams - LEAST_SAVED_GRAMS ||
            sameThing(piece, other) ||
            !related(reading, index, q)
          )
            return false;
          state.carry(q);
          const asGood = state.loss <= loss && state.mustOpen <= mustOpen;
          state.leave(q);
          return asGood;
        })
      : undefined;
    state.carry(index);
    if (found === undefined) continue;
    swaps.push({
      id: piece.id,
      name: piece.name,
      grams: piece.grams,
      with: found.piece.id,
      withName: found.piece.name,
      savedGrams: piece.grams - found.piece.grams,
      cents: found.piece.owned ? 0 : (found.piece.cents ?? 0),
      owned: found.piece.owned,
    });
  }
  return swaps.sort((a, b) => b.savedGrams - a.savedGrams || (a.id < b.id ? -1 : 1));
}

function carriedOf(state: KitState): readonly PieceIndex[] {
  return [...state.carried.keys()].filter((p) => state.carried[p] === 1);
}

/** The same thing by another mass is no swap: the owner has weighed theirs. */
function sameThing(a: { readonly name: string }, b: { readonly name: string }): boolean {
  return a.name === b.name;
}

/** Only pieces that offer the same kind of thing can stand in; a cheap look before the exact one. */
export function related(reading: Reading, a: PieceIndex, b: PieceIndex): boolean {
  const kinds = new Set(
    reading.pieces[a]?.offers.map((o) => (o.kind === 'does' ? `does ${o.fn}` : o.kind)) ?? [],
  );
  return (
    reading.pieces[b]?.offers.some((o) => kinds.has(o.kind === 'does' ? `does ${o.fn}` : o.kind)) ?? false
  );
}
