import type { Solver } from '../choosing/solver-port.ts';
import type { Broken } from './broken.ts';
import { brokenRules } from './broken.ts';
import { asItLies, bestFit, firstFit } from './first-fit.ts';
import { improve } from './improve.ts';
import type { Layout } from './lay-out.ts';
import { layOut } from './lay-out.ts';
import type { StowProgress } from './settle-stowage.ts';
import { settleStowage } from './settle-stowage.ts';
import type { StowProblem, Stowage } from './stow-problem.ts';
import type { Level } from './stow-rules.ts';
import { LEVELS } from './stow-rules.ts';
import { StowState, asGood, compareScores } from './stow-state.ts';

export interface StowPatience {
  /** Seconds; without a clock there is no limit. */
  readonly timeLimit?: number;
  readonly clock?: () => number;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (progress: StowProgress) => void;
  /**
   * Gap at which the levels that rest on estimates (seconds, moments) need no more search; 0: to proof. Default 0.01.
   */
  readonly closeEnough?: number;
}

/** One level of the answer: nothing as good at the levels before is below `bound`. */
export interface LevelOutcome {
  readonly level: Level;
  readonly value: number;
  readonly bound: number;
  /** The same of plain first-fit decreasing. */
  readonly firstFit: number;
}

export interface StowOutcome {
  readonly stowage: Stowage;
  readonly levels: readonly LevelOutcome[];
  /** Soft rules that are broken, and limits that things put by hand break. */
  readonly broken: readonly Broken[];
  readonly status: 'proven' | 'within';
  /** Greatest share by which a level could still be better; 0 when proven. */
  readonly gap: number;
  readonly stoppedBy: 'time' | 'cancel' | null;
  /** Why the solver gave up, if it did: the bounds are then those that need none. */
  readonly failed: string | null;
}

/**
 * Stows everything (M14): plain first-fit decreasing as the floor, a fit by score, exchanges and bags set down elsewhere until
 * none helps; then, with the bags where they stand, level by level with a bound from the solver. Never worse than the floor; every level says how far it is from proven.
 */
export function stow(problem: StowProblem, solver: Solver, patience: StowPatience = {}): StowOutcome {
  const { timeLimit, clock, shouldStop } = patience;
  const started = clock?.() ?? 0;
  const left = (): number =>
    timeLimit === undefined || clock === undefined ? Infinity : timeLimit - (clock() - started);
  const stopReason = (): 'time' | 'cancel' | null => {
    if (shouldStop?.() === true) return 'cancel';
    return left() <= 0 ? 'time' : null;
  };
  const layout = layOut(problem);
  const floor = firstFit(layout);
  const floorScore = floor.score.slice();
  // A sixth of the time for exchanges: the relaxation knows better where to start from.
  const enough = timeLimit === undefined ? 0 : (5 * timeLimit) / 6;
  const closeEnough = patience.closeEnough ?? 0.01;
  const start = startFrom(layout, floor, closeEnough, () => stopReason() !== null || left() < enough);
  // From here on the bags stand where they are: what goes where is settled for that.
  const standing = new StowState(layOut(problem, start.berthOf));
  standing.restore(start);
  const settled = settleStowage(standing.layout, standing, solver, {
    left,
    stopReason,
    onProgress: patience.onProgress ?? (() => undefined),
    closeEnough,
  });
  const levels = LEVELS.map(
    (level, n): LevelOutcome => ({
      level,
      value: settled.state.score[n] ?? 0,
      bound: settled.bounds[n] ?? 0,
      firstFit: floorScore[n] ?? 0,
    }),
  );
  const gap = Math.max(
    0,
    ...levels.map(({ value, bound }) => (value > bound ? (value - bound) / Math.max(1, Math.abs(value)) : 0)),
  );
  const stowage = stowageOf(settled.state);
  return {
    stowage,
    levels,
    broken: brokenRules(problem, stowage),
    status: gap === 0 ? 'proven' : 'within',
    gap,
    stoppedBy: settled.stoppedBy,
    failed: settled.failed,
  };
}

/** The better of the floor and a fit that was improved; or things as they lie now, where that is about as good. */
function startFrom(layout: Layout, floor: StowState, share: number, shouldStop: () => boolean): StowState {
  const fitted = bestFit(layout);
  improve(fitted, shouldStop);
  const best = compareScores(fitted.score, floor.score) <= 0 ? fitted : floor;
  const lying = asItLies(layout);
  const goodEnough = (state: StowState): boolean =>
    asGood(state.score, best.score, share) && compareScores(state.score, floor.score) <= 0;
  if (lying === null || goodEnough(lying)) return lying ?? best;
  improve(lying, shouldStop);
  return goodEnough(lying) ? lying : best;
}

function stowageOf(state: StowState): Stowage {
  const { problem, spots } = state.layout;
  const bagId = (b: number) => problem.bags[b]?.id ?? null;
  const berthId = (h: number) => problem.berths[h]?.id ?? null;
  return {
    places: problem.pieces.map((piece, p) => {
      const s = state.spotOf[p] ?? -1;
      const spot = spots[s];
      if (spot === undefined) return { piece: piece.id, bag: null, pocket: null, berth: null };
      const pocket = problem.bags[spot.bag]?.pockets[spot.pocket]?.id ?? null;
      return { piece: piece.id, bag: bagId(spot.bag), pocket, berth: berthId(state.berthIn(s)) };
    }),
    bags: problem.bags.flatMap((bag, b) => {
      const berth = berthId(state.berthOf[b] ?? -1);
      return state.bagUsed(b) && berth !== null ? [{ bag: bag.id, berth }] : [];
    }),
  };
}
