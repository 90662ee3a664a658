import { OPEN, dropBundle, isPinnedOn, leaveHome } from './draft.ts';
import type { Atom, Draft } from './draft.ts';
import { rangeOfUse } from './slack-limits.ts';

/**
 * What alone breaks a limit goes.
 *
 * With everything else at its least use, a piece or set that does not fit is in no feasible choice. For options: in a row
 * without negative weights, completing one takes at least the weight of the pieces it names plus, for whichever of its
 * needs is the heaviest, the lightest way of meeting it with other pieces. Where that exceeds the room the option is
 * complete in no feasible choice.
 */
export function dropTooHeavy(draft: Draft): void {
  const { least } = rangeOfUse(draft);
  const fits = (weights: readonly number[]): boolean =>
    draft.limits.every(({ live, room }, row) => {
      const weight = weights[row] ?? 0;
      return !live || weight + (least[row] ?? 0) - Math.min(0, weight) <= room;
    });
  draft.pieces.forEach((piece, p) => {
    if (draft.state[p] === OPEN && !fits(piece.weights)) leaveHome(draft, p);
  });
  draft.bundles.forEach((bundle, b) => {
    if (bundle.state === OPEN && !fits(bundle.weights)) dropBundle(draft, b);
  });
  draft.limits.forEach((limit, row) => {
    if (limit.live && everyWeightAtLeastZero(draft, row))
      dropHeavyOptions(draft, row, limit.room - (least[row] ?? 0));
  });
}

function everyWeightAtLeastZero(draft: Draft, row: number): boolean {
  const ok = (weights: readonly number[] | undefined): boolean => (weights?.[row] ?? 0) >= 0;
  return (
    draft.bundles.every((bundle) => bundle.state !== OPEN || ok(bundle.weights)) &&
    draft.pieces.every(
      (piece, p) =>
        (draft.state[p] !== OPEN && !isPinnedOn(draft, p)) ||
        (ok(piece.weights) && ok(piece.supply?.buy?.weights)),
    )
  );
}

function dropHeavyOptions(draft: Draft, row: number, room: number): void {
  const { pieceCount } = draft;
  const weightOf = (p: number): number =>
    draft.state[p] === OPEN ? (draft.pieces[p]?.weights[row] ?? 0) : 0;
  /** Least weight, beyond the pieces in `named`, of any way of meeting the need. */
  const lightestWay = (n: number, named: readonly Atom[]): number => {
    const need = draft.needs[n];
    if (need?.kind !== 'any') return 0;
    let best = Infinity;
    for (const way of need.ways) {
      let sum = 0;
      for (const atom of way) if (atom < pieceCount && !named.includes(atom)) sum += weightOf(atom);
      best = Math.min(best, sum);
    }
    return best === Infinity ? 0 : best;
  };
  /** Of the pieces an option names, and the most any single need in it adds on top. */
  const lightest = (atoms: readonly Atom[]): number => {
    let sum = 0;
    let mostByNeed = 0;
    for (const atom of atoms) {
      if (atom < pieceCount) sum += weightOf(atom);
      else mostByNeed = Math.max(mostByNeed, lightestWay(atom - pieceCount, atoms));
    }
    return sum + mostByNeed;
  };
  draft.events = draft.events.map((event) => {
    const kept = event.filter(({ atoms }) => lightest(atoms) <= room);
    draft.changes += event.length - kept.length;
    return kept;
  });
}
