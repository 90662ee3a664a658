import { bestPlace, putBest, putThere } from './first-fit.ts';
import { LEVEL_COUNT } from './stow-rules.ts';
import { compareScores } from './stow-state.ts';
import type { StowState } from './stow-state.ts';

/**
 * Moves one piece, exchanges two, or sets a bag down elsewhere, for as long as that makes the score better and nobody says
 * stop. Ends in a stowage that no such step betters.
 */
export function improve(state: StowState, shouldStop: () => boolean): void {
  const { layout } = state;
  const pieces = layout.problem.pieces.length;
  let better = true;
  while (better && !shouldStop()) {
    better = false;
    for (let p = 0; p < pieces; p++) {
      if (shouldStop()) return;
      if (layout.settled[p] === 0 && movePiece(state, p)) better = true;
    }
    for (let p = 0; p < pieces; p++) {
      if (shouldStop()) return;
      if (layout.settled[p] === 0 && exchange(state, p)) better = true;
    }
    for (const b of layout.problem.bags.keys()) if (moveBag(state, b)) better = true;
    for (const [g, members] of layout.groups.entries()) {
      if (shouldStop()) return;
      if (state.partsOf(g) > 0 && gather(state, members)) better = true;
    }
  }
}

function movePiece(state: StowState, p: number): boolean {
  const from = state.spotOf[p] ?? -1;
  const berth = state.berthIn(from);
  const before = state.score.slice();
  state.put(p, -1);
  const best = bestPlace(state, p);
  if (best !== null && compareScores(best.score, before) < 0) {
    putThere(state, p, best);
    return true;
  }
  if (from >= 0) putThere(state, p, { s: from, h: berth });
  return false;
}

function exchange(state: StowState, p: number): boolean {
  const { layout } = state;
  const spots = layout.spots.length;
  const mends = state.mightMend(p);
  for (let q = p + 1; q < layout.settled.length; q++) {
    const a = state.spotOf[p] ?? -1;
    const b = state.spotOf[q] ?? -1;
    if (layout.settled[q] === 1 || a === b || a < 0 || b < 0) continue;
    if (layout.may[p * spots + b] !== 1 || layout.may[q * spots + a] !== 1) continue;
    if (!mends && !state.mightMend(q) && !isCheaper(state, p, a, q, b)) continue;
    const before = state.score.slice();
    state.put(p, -1);
    state.put(q, -1);
    if (state.takesPiece(p, b)) {
      state.put(p, b);
      if (state.takesPiece(q, a)) {
        state.put(q, a);
        if (compareScores(state.score, before) < 0) return true;
        state.put(q, -1);
      }
      state.put(p, -1);
    }
    state.put(p, a);
    state.put(q, b);
  }
  return false;
}

const change = new Float64Array(LEVEL_COUNT);
const NOTHING = new Float64Array(LEVEL_COUNT);

/** Whether two pieces would count less by themselves, each in the other's place: where nothing is wrong between things, nothing else can win. */
function isCheaper(state: StowState, p: number, a: number, q: number, b: number): boolean {
  change.fill(0);
  state.addCost(p, a, change, -1);
  state.addCost(q, b, change, -1);
  state.addCost(p, b, change, 1);
  state.addCost(q, a, change, 1);
  return compareScores(change, NOTHING) < 0;
}

/** Everything that belongs together into one bag, whatever else is in it making room; the best bag for it, if any is better. */
function gather(state: StowState, members: readonly number[]): boolean {
  const { layout } = state;
  const before = state.snapshot();
  let best = before;
  for (const b of layout.problem.bags.keys()) {
    const into = members.filter((p) => layout.allowed[p]?.some((s) => layout.spots[s]?.bag === b));
    if (into.length < 2) continue;
    state.restore(before);
    const out = new Set(into);
    for (const [p, s] of state.spotOf.entries()) if (layout.spots[s]?.bag === b) out.add(p);
    for (const p of out) if (layout.settled[p] === 0) state.put(p, -1);
    for (const p of into) {
      if (layout.settled[p] === 1) continue;
      const place = layout.allowed[p]?.find((s) => layout.spots[s]?.bag === b && state.takesPiece(p, s));
      if (place !== undefined) state.put(p, place);
    }
    for (const p of out) if (state.spotOf[p] === -1) putBest(state, p);
    const lost = [...out].some((p) => state.spotOf[p] === -1 && before.spotOf[p] !== -1);
    if (!lost && compareScores(state.score, best.score) < 0) best = state.snapshot();
  }
  state.restore(best);
  return best !== before;
}

function moveBag(state: StowState, b: number): boolean {
  const homes = state.layout.homes[b] ?? [];
  if (homes.length < 2) return false;
  const start = state.berthOf[b] ?? -1;
  let best = state.score.slice();
  let to = start;
  for (const h of homes) {
    if (h === start) continue;
    state.setBerth(b, start);
    if (!state.takesBag(b, h)) continue;
    state.setBerth(b, h);
    if (compareScores(state.score, best) < 0) {
      best = state.score.slice();
      to = h;
    }
  }
  state.setBerth(b, to);
  return to !== start;
}
