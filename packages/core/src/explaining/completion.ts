import type { KitState } from '../choosing/kit-state.ts';
import type { NeedIndex, PieceIndex, Way } from '../choosing/problem.ts';

/** The least that must be added to a kit so that some needs are met. */
export interface Completion {
  readonly pieces: readonly PieceIndex[];
  readonly cost: number;
  /** False when the search was cut short and something cheaper may exist. */
  readonly proven: boolean;
}

/** Steps after which the search keeps the best it has; real cures take a few hundred. */
const STEP_LIMIT = 4_000;

/**
 * Cheapest set of pieces that, added to the kit in `state`, meets all of `needs` (M10). Depth-first over the ways of the
 * first need still open, cheapest way first, cut where the cost reaches the best known: exact unless `proven` says no.
 * `cost` is per piece, Infinity for pieces that are out of the question; whole numbers. Returns null when nothing does it.
 * `state` is used as a scratch pad and left as it was.
 */
export function cheapestCompletion(
  state: KitState,
  needs: readonly NeedIndex[],
  cost: ArrayLike<number>,
  below = Number.POSITIVE_INFINITY,
): Completion | null {
  const { problem } = state.compiled;
  const added: PieceIndex[] = [];
  let best: { pieces: PieceIndex[]; cost: number } | null = null;
  let bound = below;
  let steps = 0;

  const priceOf = (way: Way): number => {
    let sum = 0;
    for (const p of way.pieces) if (state.carried[p] !== 1) sum += cost[p] ?? Number.POSITIVE_INFINITY;
    return sum;
  };

  const search = (open: readonly NeedIndex[], spent: number): void => {
    if (spent >= bound || steps >= STEP_LIMIT) return;
    steps += 1;
    const index = open.findIndex((n) => !state.needMet(n));
    if (index < 0) {
      best = { pieces: [...added], cost: spent };
      bound = spent;
      return;
    }
    const goal = open[index] ?? 0;
    const rest = open.slice(index + 1);
    const need = problem.needs[goal];
    if (need === undefined) return;
    if (need.kind === 'enough') {
      // One more of the pieces that add to it; the goal stays open until the units are there.
      const next = need.from
        .filter(
          ({ piece, units }) =>
            units > 0 &&
            state.carried[piece] !== 1 &&
            Number.isFinite(cost[piece] ?? Number.POSITIVE_INFINITY),
        )
        .sort((a, b) => (cost[a.piece] ?? 0) / a.units - (cost[b.piece] ?? 0) / b.units || a.piece - b.piece);
      for (const { piece } of next) take([piece], [goal, ...rest], spent);
      return;
    }
    const ways = need.ways
      .map((way) => ({ way, price: priceOf(way) }))
      .filter(({ price }) => spent + price < bound)
      .sort((a, b) => a.price - b.price || a.way.needs.length - b.way.needs.length);
    for (const { way } of ways) take(way.pieces, [...way.needs, ...rest], spent);
  };

  const take = (pieces: readonly PieceIndex[], open: readonly NeedIndex[], spent: number): void => {
    const fresh = pieces.filter((p) => state.carried[p] !== 1);
    const price = fresh.reduce((sum, p) => sum + (cost[p] ?? Number.POSITIVE_INFINITY), 0);
    if (!(spent + price < bound)) return;
    for (const p of fresh) {
      state.carry(p);
      added.push(p);
    }
    search(open, spent + price);
    for (const p of fresh) {
      state.leave(p);
      added.pop();
    }
  };

  search(needs, 0);
  const found = best as { pieces: PieceIndex[]; cost: number } | null;
  return found === null
    ? null
    : { pieces: found.pieces.sort((a, b) => a - b), cost: found.cost, proven: steps < STEP_LIMIT };
}
