import type { Layout } from './lay-out.ts';
import { AT } from './piece-costs.ts';
import { LEVEL_COUNT } from './stow-rules.ts';
import { StowState, compareScores } from './stow-state.ts';

/** What was put in a bag by hand, then what must stay in its berth: laid first, whatever the limits say. */
function layHandPlaced(state: StowState): readonly number[] {
  const { layout } = state;
  const rest: number[] = [];
  for (const [p, piece] of layout.problem.pieces.entries()) {
    const [place = -1] = layout.allowed[p] ?? [];
    if (layout.settled[p] === 1) state.put(p, place);
    else if (piece.byHand === undefined) rest.push(p);
  }
  for (const [p, piece] of layout.problem.pieces.entries()) {
    if (piece.byHand?.kind !== 'berth') continue;
    const allowed = layout.allowed[p] ?? [];
    const place =
      allowed.find((s) => state.takesPiece(p, s)) ?? allowed.findLast((s) => layout.spots[s]?.bag === -1);
    if (place !== undefined) state.put(p, place);
  }
  return rest;
}

/** Bulkiest first; of equals the longer, then the heavier. */
function decreasing({ problem }: Layout, pieces: readonly number[]): number[] {
  const key = (p: number) => problem.pieces[p];
  return [...pieces].sort(
    (a, b) =>
      (key(b)?.millilitres ?? 0) - (key(a)?.millilitres ?? 0) ||
      (key(b)?.size.length ?? 0) - (key(a)?.size.length ?? 0) ||
      (key(b)?.grams ?? 0) - (key(a)?.grams ?? 0) ||
      a - b,
  );
}

/** First-fit decreasing: each piece into the first place that takes it, bags in their order, loose last. The floor (M14). */
export function firstFit(layout: Layout): StowState {
  const state = new StowState(layout);
  for (const p of decreasing(layout, layHandPlaced(state))) {
    const place = (layout.allowed[p] ?? []).find((s) => state.takesPiece(p, s));
    if (place !== undefined) state.put(p, place);
  }
  return state;
}

/** Each piece, bulkiest first, where it makes the score least worse. */
export function bestFit(layout: Layout): StowState {
  const state = new StowState(layout);
  for (const p of decreasing(layout, layHandPlaced(state))) putBest(state, p);
  return state;
}

/**
 * Everything that may stay where it lies now is left there, the rest as `bestFit` has it; null where nobody said where
 * anything lies.
 */
export function asItLies(layout: Layout): StowState | null {
  const { problem, spots, allowed } = layout;
  if (!problem.pieces.some(({ now }) => now !== undefined)) return null;
  const state = new StowState(layout);
  const rest: number[] = [];
  for (const p of layHandPlaced(state)) {
    const { now } = problem.pieces[p] ?? {};
    const there = (allowed[p] ?? []).filter((s) => {
      const bag = problem.bags[spots[s]?.bag ?? -1];
      if (now === undefined || bag?.id !== now.bag) return false;
      return now.pocket === null || bag.pockets[spots[s]?.pocket ?? -1]?.id === now.pocket;
    });
    const place = there.find((s) => state.takesPiece(p, s));
    if (place === undefined) rest.push(p);
    else state.put(p, place);
  }
  for (const p of decreasing(layout, rest)) putBest(state, p);
  return state;
}

/** Puts a piece that lies nowhere where the score is best; leaves it out when nothing takes it. */
export function putBest(state: StowState, p: number): void {
  const best = bestPlace(state, p);
  if (best !== null) putThere(state, p, best);
}

/** A place, and the berth its bag stands in for it. */
export interface Place {
  readonly s: number;
  readonly h: number;
  readonly score: Float64Array;
}

/** The best place for a piece that lies nowhere. An empty bag that may ride elsewhere is tried in every berth. */
export function bestPlace(state: StowState, p: number): Place | null {
  const { layout } = state;
  let best: Place | null = null;
  const adds = state.onlyAdds;
  for (const s of layout.allowed[p] ?? []) {
    const b = layout.spots[s]?.bag ?? -1;
    const now = state.berthIn(s);
    const berths = b >= 0 && !state.bagUsed(b) ? (layout.homes[b] ?? []) : [now];
    for (const h of berths) {
      if (b >= 0) state.setBerth(b, h);
      if (best !== null && adds && !couldBeBetter(state, p, s, best.score)) continue;
      if (!state.takesPiece(p, s)) continue;
      state.put(p, s);
      if (best === null || compareScores(state.score, best.score) < 0)
        best = { s, h, score: state.score.slice() };
      state.put(p, -1);
    }
    if (b >= 0) state.setBerth(b, now);
  }
  return best;
}

const least = new Float64Array(LEVEL_COUNT);

/** Whether a place could still beat the best one, if company and order came to nothing more there. */
function couldBeBetter(state: StowState, p: number, s: number, best: Float64Array): boolean {
  least.set(state.score);
  least[AT.unplaced] = (least[AT.unplaced] ?? 0) - 1;
  state.addCost(p, s, least, 1);
  return compareScores(least, best) < 0;
}

export function putThere(state: StowState, p: number, { s, h }: Pick<Place, 's' | 'h'>): void {
  const b = state.layout.spots[s]?.bag ?? -1;
  if (b >= 0) state.setBerth(b, h);
  state.put(p, s);
}
