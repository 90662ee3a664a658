import type { Layout } from './lay-out.ts';
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

/** Puts a piece that lies nowhere where the score is best; leaves it out when nothing takes it. */
export function putBest(state: StowState, p: number): void {
  let best = -1;
  let score: Float64Array | null = null;
  for (const s of state.layout.allowed[p] ?? []) {
    if (!state.takesPiece(p, s)) continue;
    state.put(p, s);
    if (score === null || compareScores(state.score, score) < 0) {
      best = s;
      score = state.score.slice();
    }
    state.put(p, -1);
  }
  if (best >= 0) state.put(p, best);
}
