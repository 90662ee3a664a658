import { certifiedBound, fixByReducedCost, wholeAbove } from '../choosing/bound.ts';
import type { LinearModel, RelaxedSession, Solver, SolverAnswer } from '../choosing/solver-port.ts';
import { relaxedSession } from '../choosing/relaxed-session.ts';
import type { Layout } from './lay-out.ts';
import type { Lies } from './model-draft.ts';
import { putBest } from './first-fit.ts';
import { improve } from './improve.ts';
import type { StowModel } from './stow-model.ts';
import { stowModel } from './stow-model.ts';
import { COUNTED, LEVELS, LEVEL_COUNT } from './stow-rules.ts';
import { StowState, compareScores } from './stow-state.ts';

/** How long to go on, seconds left; and what to tell meanwhile. */
export interface Pace {
  readonly left: () => number;
  readonly stopReason: () => 'time' | 'cancel' | null;
  readonly onProgress: (progress: StowProgress) => void;
  readonly closeEnough: number;
}

export interface StowProgress {
  readonly level: (typeof LEVELS)[number];
  readonly value: number;
  readonly bound: number;
}

export interface Settled {
  readonly state: StowState;
  /** By level: no stowage as good at the levels before is below this. */
  readonly bounds: Float64Array;
  readonly stoppedBy: 'time' | 'cancel' | null;
  /** The solver gave up; what was found stands, with bounds that need no solver. */
  readonly failed: string | null;
}

/** Steps of a dive at most; what counts as whole, and what is nearly so; how many places are settled at a step. */
const DIVES = 40;
const WHOLE = 1e-6;
const NEARLY = 0.9;
/** A row that holds a level at its best value, half a unit above: exact for whole numbers. */
const HELD = 0.5;

/**
 * Level by level with the bags where they stand, each with the earlier ones held at what was reached: a bound from the columns alone, then the
 * relaxation with its certified bound, a stowage rounded from it, and where the gap is still open the integer search.
 */
export function settleStowage(layout: Layout, start: StowState, solver: Solver, pace: Pace): Settled {
  const bounds = new Float64Array(LEVEL_COUNT);
  if (layout.problem.pieces.length === 0) return { state: start, bounds, stoppedBy: null, failed: null };
  const model = stowModel(layout);
  const work = new Work(layout, model, solver, start, pace);
  try {
    for (const [level] of LEVELS.entries()) bounds[level] = work.settle(level);
  } finally {
    work.close();
  }
  return {
    state: work.best,
    bounds,
    stoppedBy: work.stoppedBy ?? (work.cutShort ? 'time' : null),
    failed: work.failed,
  };
}

class Work {
  best: StowState;
  stoppedBy: 'time' | 'cancel' | null = null;
  failed: string | null = null;
  private readonly layout: Layout;
  private readonly model: StowModel;
  private readonly solver: Solver;
  private readonly pace: Pace;
  private readonly lower: Float64Array;
  private readonly upper: Float64Array;
  /** Levels held so far, as rows of the model; what is fixed column by column needs none. */
  private held: { readonly cost: Float64Array; readonly limit: number }[] = [];
  /** Some level was left before it was settled. */
  cutShort = false;
  /** Seconds kept for the levels to come. */
  private reserve = 0;
  private session: RelaxedSession | null = null;
  private now: LinearModel | null = null;

  constructor(layout: Layout, model: StowModel, solver: Solver, start: StowState, pace: Pace) {
    this.layout = layout;
    this.model = model;
    this.solver = solver;
    this.best = start;
    this.pace = pace;
    this.lower = model.linear.lower.slice();
    this.upper = model.linear.upper.slice();
  }

  close(): void {
    this.session?.close();
  }

  /** Settles one level; returns its bound. A level takes half the time that is left: the later ones want a bound too. */
  settle(level: number): number {
    const left = this.pace.left();
    this.reserve = level === LEVEL_COUNT - 1 || !Number.isFinite(left) ? 0 : left / 2;
    const cost = this.model.cost[level] ?? new Float64Array(0);
    const least = this.columnBound(cost);
    const { closeEnough } = this.pace;
    let bound = least;
    const value = (): number => this.best.score[level] ?? 0;
    const open = (): boolean => value() > wholeAbove(bound) && !this.stop();
    const far = (): boolean =>
      open() && (level < COUNTED || value() - bound > closeEnough * Math.max(1, Math.abs(value())));
    if (open()) {
      const relaxed = this.relax(cost);
      bound = Math.max(bound, relaxed?.bound ?? -Infinity);
      this.tell(level, bound);
      if (relaxed !== null && far()) this.dive();
      if (relaxed !== null && far()) this.round(relaxed.x, relaxed.reducedCost);
      if (relaxed !== null) this.narrow(relaxed, value());
      if (far()) bound = Math.max(bound, this.search(level, cost, bound));
      // Again with what was found since: the less is left to gain, the fewer places are left to the later levels.
      if (relaxed !== null) this.narrow(relaxed, value());
    }
    this.tell(level, bound);
    this.hold(cost, value(), least);
    return Math.min(value(), wholeAbove(bound));
  }

  private stop(): boolean {
    this.stoppedBy ??= this.pace.stopReason();
    if (this.stoppedBy !== null || this.failed !== null) return true;
    if (this.reserve === 0 || this.pace.left() > this.reserve) return false;
    this.cutShort = true;
    return true;
  }

  private tell(level: number, bound: number): void {
    const name = LEVELS[level];
    if (name !== undefined) this.pace.onProgress({ level: name, value: this.best.score[level] ?? 0, bound });
  }

  /** Each piece where it counts least, whatever else lies there. */
  private columnBound(cost: Float64Array): number {
    let sum = 0;
    const { liesOf, without } = this.model;
    for (const [p, lies] of liesOf.entries()) {
      let least = Infinity;
      const none = without[p] ?? -1;
      if (none >= 0 && (this.upper[none] ?? 0) > 0) least = cost[none] ?? 0;
      for (const { column } of lies)
        if ((this.upper[column] ?? 0) > 0) least = Math.min(least, cost[column] ?? 0);
      if (Number.isFinite(least)) sum += least;
    }
    return sum;
  }

  private current(): LinearModel {
    if (this.now !== null) return { ...this.now, lower: this.lower, upper: this.upper };
    const { linear } = this.model;
    const start = [...linear.start];
    const column = [...linear.column];
    const value = [...linear.value];
    const rowLower = [...linear.rowLower];
    const rowUpper = [...linear.rowUpper];
    for (const { cost, limit } of this.held) {
      // Scaled, so that half a unit is far above what a solver lets pass.
      const greatest = cost.reduce((most, c) => Math.max(most, Math.abs(c)), 1);
      for (const [j, c] of cost.entries())
        if (c !== 0) {
          column.push(j);
          value.push(c / greatest);
        }
      start.push(column.length);
      rowLower.push(-Infinity);
      rowUpper.push(limit / greatest);
    }
    this.now = {
      ...linear,
      start: Int32Array.from(start),
      column: Int32Array.from(column),
      value: Float64Array.from(value),
      rowLower: Float64Array.from(rowLower),
      rowUpper: Float64Array.from(rowUpper),
    };
    return { ...this.now, lower: this.lower, upper: this.upper };
  }

  private relax(cost: Float64Array): { bound: number; x: Float64Array; reducedCost: Float64Array } | null {
    const model = { ...this.current(), cost };
    if (this.session === null) this.session = relaxedSession(this.solver, model);
    else this.session.setCost(cost);
    this.session.setColumnBounds(this.lower, this.upper);
    const answer = this.session.solve(this.limits());
    if (answer.kind === 'failed') this.failed = answer.cause;
    if (answer.kind !== 'optimal' || answer.rowDual === undefined) return null;
    const { bound, reducedCost } = certifiedBound(model, answer.rowDual, cost);
    return { bound, x: answer.x, reducedCost };
  }

  private limits(): { timeLimit?: number; shouldStop: () => boolean } {
    const left = this.pace.left() - this.reserve;
    return {
      ...(Number.isFinite(left) ? { timeLimit: Math.max(0, left) } : {}),
      shouldStop: () => this.stop(),
    };
  }

  /** Pieces to where the relaxation mostly has them, then to where they best go, then improved. */
  private round(x: Float64Array, reducedCost: Float64Array): void {
    const { layout, model } = this;
    const state = new StowState(layout);
    const share = (column: number): number => (x[column] ?? 0) - 1e-12 * (reducedCost[column] ?? 0);
    const wished = model.lies
      .filter(({ column }) => (x[column] ?? 0) > 0.4)
      .sort((a, b) => share(b.column) - share(a.column) || a.column - b.column);
    for (const [p] of layout.problem.pieces.entries())
      if (layout.settled[p] === 1) state.put(p, layout.allowed[p]?.[0] ?? -1);
    for (const { p, s } of wished) if (state.spotOf[p] === -1 && state.takesPiece(p, s)) state.put(p, s);
    for (const p of layout.problem.pieces.keys()) if (state.spotOf[p] === -1) putBest(state, p);
    for (const [p, piece] of layout.problem.pieces.entries())
      if (state.spotOf[p] === -1 && piece.byHand !== undefined) return;
    improve(state, () => this.stop());
    this.offer(state);
  }

  /**
   * Follows the relaxation down: what it has whole, or nearly, stays there, and it is solved again, until all is whole or
   * nothing fits. Finds what a search finds, in a fraction of the time, wherever the relaxation is tight.
   */
  private dive(): void {
    const lower = this.lower.slice();
    const upper = this.upper.slice();
    // The bags that come in the best so far: a bag that comes by halves only would weigh half.
    for (const [b, rides] of this.model.rides.entries())
      if (this.best.bagUsed(b) && (upper[rides] ?? 0) > 0) lower[rides] = 1;
    const begun = this.lowest(lower, upper);
    if (begun?.kind !== 'optimal') return;
    let { x } = begun;
    for (let step = 0; step < DIVES && !this.stop(); step++) {
      const share = ({ column }: Lies): number => x[column] ?? 0;
      const open = this.model.lies.filter((lie) => lower[lie.column] === 0 && share(lie) > WHOLE);
      if (open.every((lie) => share(lie) > 1 - WHOLE)) {
        this.take(x);
        return;
      }
      open.sort((a, b) => share(b) - share(a) || a.column - b.column);
      const sure = open.filter((lie) => share(lie) > NEARLY).length;
      const before = lower.slice();
      for (const lie of open.slice(0, Math.max(1, sure))) this.lay(lie, lower);
      let answer = this.lowest(lower, upper);
      if (answer?.kind === 'infeasible' && sure > 0) {
        // Not all of it together: the surest half.
        lower.set(before);
        for (const lie of open.slice(0, Math.ceil(sure / 2))) this.lay(lie, lower);
        answer = this.lowest(lower, upper);
      }
      const [surest] = open;
      if (answer?.kind === 'infeasible' && surest !== undefined) {
        lower.set(before);
        upper[surest.column] = 0;
        answer = this.lowest(lower, upper);
      }
      if (answer?.kind !== 'optimal') return;
      x = answer.x;
    }
  }

  /** A piece into its place, and the bag along with it. */
  private lay({ s, column }: Lies, lower: Float64Array): void {
    lower[column] = 1;
    const rides = this.model.rides[this.layout.spots[s]?.bag ?? -1] ?? -1;
    if (rides >= 0) lower[rides] = 1;
  }

  private lowest(lower: Float64Array, upper: Float64Array): SolverAnswer | undefined {
    this.session?.setColumnBounds(lower, upper);
    return this.session?.solve(this.limits());
  }

  private offer(state: StowState): void {
    if (compareScores(state.score, this.best.score) < 0) this.best = state;
  }

  /** The integer search for something better; returns its bound. */
  private search(level: number, cost: Float64Array, bound: number): number {
    const value = this.best.score[level] ?? 0;
    const slack = level < COUNTED ? 0.9 : Math.max(0.9, 0.9 * this.pace.closeEnough * Math.abs(value));
    const answer = this.solver.solve(
      { ...this.current(), cost },
      { ...this.limits(), cutoff: value - HELD, absoluteGap: slack },
    );
    switch (answer.kind) {
      case 'infeasible':
        return value;
      case 'failed':
        this.failed = answer.cause;
        return bound;
      case 'unbounded':
        return bound;
      case 'stopped':
        this.stop();
        this.take(answer.x);
        return Math.min(value, answer.bound);
      case 'optimal':
        this.take(answer.x);
        // Within this slack of the best there is.
        return Math.min(value, this.best.score[level] ?? value, wholeAbove(answer.objective - slack));
    }
  }

  /** A point of the model as a stowage; the state counts it anew. */
  private take(x: Float64Array | null): void {
    if (x === null) return;
    const state = new StowState(this.layout);
    for (const { p, s, column } of this.model.lies) if ((x[column] ?? 0) > 0.5) state.put(p, s);
    if (!this.layout.problem.pieces.every((_, p) => holds(state, p))) return;
    improve(state, () => this.stop());
    this.offer(state);
  }

  /** What cannot be in anything as good is taken out of the model; whole columns only. */
  private narrow(certified: { bound: number; reducedCost: Float64Array }, value: number): void {
    const lower = this.lower.slice();
    const upper = this.upper.slice();
    fixByReducedCost(certified, value, lower, upper);
    for (const [j, integer] of this.model.linear.integer.entries()) {
      if (integer !== 1) continue;
      this.lower[j] = lower[j] ?? 0;
      this.upper[j] = upper[j] ?? 0;
    }
  }

  /** Holds a level at its value for the levels to come. */
  private hold(cost: Float64Array, value: number, least: number): void {
    if (value <= least) {
      // Every piece counts what it least can: dearer places are closed, and nothing else may count.
      for (const [p, lies] of this.model.liesOf.entries()) {
        const none = this.model.without[p] ?? -1;
        const columns = [...lies.map(({ column }) => column), ...(none >= 0 ? [none] : [])];
        const open = columns.filter((j) => (this.upper[j] ?? 0) > 0);
        const cheapest = Math.min(...open.map((j) => cost[j] ?? 0));
        for (const j of open) if ((cost[j] ?? 0) > cheapest) this.upper[j] = 0;
      }
      const piece = new Set(this.model.lies.map(({ column }) => column));
      for (const none of this.model.without) if (none >= 0) piece.add(none);
      for (const [j, c] of cost.entries()) if (c > 0 && !piece.has(j)) this.upper[j] = 0;
      return;
    }
    this.held = [...this.held, { cost, limit: value + HELD }];
    this.now = null;
    this.session?.close();
    this.session = null;
  }
}

/** Whether a piece taken over from the solver keeps to every limit: its tolerances are not ours. */
function holds(state: StowState, p: number): boolean {
  const s = state.spotOf[p] ?? -1;
  if (s < 0 || state.layout.settled[p] === 1) return true;
  state.put(p, -1);
  const fine = state.takesPiece(p, s);
  state.put(p, s);
  return fine;
}
