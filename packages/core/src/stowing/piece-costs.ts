import type { Layout } from './lay-out.ts';
import type { Spot } from './spots.ts';
import type { LiesNow } from './stow-problem.ts';
import {
  LEVEL_COUNT,
  dislikesHeat,
  isHot,
  isWet,
  secondsToBag,
  secondsToBerth,
  SECONDS,
} from './stow-rules.ts';

/** What a gram in a berth counts at the levels of height and of what hangs behind the rear axle, by berth. */
export interface BerthCosts {
  /** mm above the lowest berth. */
  readonly above: Float64Array;
  /** mm behind the rear axle. */
  readonly behind: Float64Array;
}

export function berthCosts({ problem }: Layout): BerthCosts {
  const lowest = Math.min(0, ...problem.berths.map((berth) => berth.z));
  return {
    above: Float64Array.from(problem.berths, (berth) => berth.z - lowest),
    behind: Float64Array.from(problem.berths, (berth) => Math.max(0, berth.x - problem.rearAxle)),
  };
}

/** Position of each level in a score. */
export const AT = { unplaced: 0, danger: 1, order: 2, reach: 3, behind: 4, height: 5, moved: 6 } as const;

/**
 * What a piece counts by itself at every level (M14), by where it lies and which berth that is in: added to `out`, times
 * `sign`. Place -1: none.
 */
export class PieceCosts {
  readonly berths: BerthCosts;
  private readonly layout: Layout;
  private readonly wet: Uint8Array;
  private readonly warm: Uint8Array;
  private readonly hot: Uint8Array;

  constructor(layout: Layout) {
    const { problem } = layout;
    this.layout = layout;
    this.berths = berthCosts(layout);
    this.wet = Uint8Array.from(problem.pieces, (piece) => (isWet(piece) ? 1 : 0));
    this.warm = Uint8Array.from(problem.pieces, (piece) => (dislikesHeat(piece) ? 1 : 0));
    this.hot = Uint8Array.from(problem.berths, (berth) => (isHot(berth) ? 1 : 0));
  }

  add(p: number, s: number, h: number, out: Float64Array, sign: 1 | -1): void {
    const { problem, spots, bagged } = this.layout;
    const piece = problem.pieces[p];
    const spot = spots[s];
    const berth = problem.berths[h];
    const put = (at: number, n: number): void => {
      out[at] = (out[at] ?? 0) + sign * n;
    };
    if (piece === undefined) return;
    if (spot === undefined || berth === undefined) {
      put(AT.unplaced, 1);
      return;
    }
    const bag = problem.bags[spot.bag];
    if (this.wet[p] === 1 && bag?.spillproof !== true) put(AT.danger, 1);
    if (this.warm[p] === 1 && this.hot[h] === 1) put(AT.danger, 1);
    if (piece.firstGrab && !(berth.atHand || bag?.firstGrab === true)) put(AT.order, 1);
    if (!piece.firstGrab && bag?.firstGrab === true) put(AT.order, 1);
    if (bag === undefined && bagged[p] === 1) put(AT.order, 1);
    if (piece.now !== undefined && !this.leaves(piece.now, spot)) put(AT.moved, 1);
    put(AT.reach, piece.uses * secondsTo(this.layout, s, h));
    put(AT.height, piece.grams * (this.berths.above[h] ?? 0));
    put(AT.behind, piece.grams * (this.berths.behind[h] ?? 0));
  }

  /** Whether a place is the one that a piece lies in now; anywhere in its bag where nobody said more. */
  private leaves(now: LiesNow, spot: Spot): boolean {
    const bag = this.layout.problem.bags[spot.bag];
    if (bag === undefined || bag.id !== now.bag) return false;
    return now.pocket === null || bag.pockets[spot.pocket]?.id === now.pocket;
  }

  /** The same as a list by level. */
  of(p: number, s: number, h: number): Float64Array {
    const out = new Float64Array(LEVEL_COUNT);
    this.add(p, s, h, out, 1);
    return out;
  }
}

/** Seconds until a hand is on what lies in a place, with its bag (or itself) in that berth. */
export function secondsTo({ problem, spots }: Layout, s: number, h: number): number {
  const spot = spots[s];
  const berth = problem.berths[h];
  if (spot === undefined || berth === undefined) return 0;
  const bag = problem.bags[spot.bag];
  if (bag === undefined) return secondsToBerth(berth) + SECONDS.spot.loose;
  return secondsToBag(bag, berth) + (spot.pocket < 0 ? SECONDS.spot.room : SECONDS.spot.pocket);
}
