import { certifiedBound } from './bound.ts';
import type { CertifiedBound } from './bound.ts';
import type { Experience } from './experience.ts';
import { constantOf, valueOf, valuesToBeat } from './measures.ts';
import type { Measure } from './measures.ts';
import type { ChoiceModel } from './model.ts';
import type { Reduced } from './reduce/reduce.ts';
import type { RelaxedSession, Solver } from './solver-port.ts';
import type { Found, Workbench } from './workbench.ts';

/** When to give up. The clock comes from outside: core has none. */
export interface Control {
  /** True stops at the next chance. */
  readonly shouldStop?: () => boolean;
  /** Seconds on `clock` at which to stop. */
  readonly until?: number;
  readonly clock?: () => number;
  /** A better plan, or a better bound on the first measure (in loss or grams). */
  readonly onProgress?: (found: Found | null, bound: number) => void;
}

/** Greatest loss and mass wanted, settled pieces included. */
export interface Caps {
  readonly loss?: number;
  readonly grams?: number;
}

/**
 * Room left above a whole number when it is made a bound: none that any whole-valued point could use, and hardly any for
 * the relaxation (half a unit, though exact too, would let it save hundreds of grams where loss is cheap).
 */
export const HELD = 1e-6;

/** What solves of one problem share. */
export interface Ground {
  readonly reduced: Reduced;
  readonly model: ChoiceModel;
  readonly bench: Workbench;
  readonly solver: Solver;
  readonly session: RelaxedSession;
  readonly experience: Experience;
}

/**
 * One search for the best plan by a row of measures: the best so far, the caps, the bounds every plan worth having keeps,
 * and when to stop. The tree and the staged search both work on it.
 */
export class Hunt {
  readonly ground: Ground;
  readonly row: readonly Measure[];
  readonly caps: Caps;
  readonly control: Control;
  /** Bounds of the columns in every plan not worse than the best known. */
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Upper bounds of the rows as they stand in the session. */
  readonly rowUpper: Float64Array;
  best: Found | null = null;
  /** Values of the best plan known by `row`; Infinity without one. */
  bestValues: number[];
  /** The best plan of this ground: `best`, unless a better one is known from outside. */
  local: Found | null = null;
  /** A plan of a larger ground (see ./shrink.ts): to be beaten, its choice means nothing here. */
  readonly outside: Found | null;
  private localValues: number[];

  constructor(
    ground: Ground,
    row: readonly Measure[],
    caps: Caps,
    control: Control,
    outside: Found | null = null,
  ) {
    this.ground = ground;
    this.row = row;
    this.caps = caps;
    this.control = control;
    const { linear } = ground.model;
    this.lower = linear.lower.slice();
    this.upper = linear.upper.slice();
    // Not known to this hunt yet: whatever an earlier one left in the session is overwritten below.
    this.rowUpper = linear.rowUpper.slice();
    for (const row of Object.values(ground.model.row)) if (row >= 0) this.rowUpper[row] = NaN;
    this.outside = outside;
    this.localValues = row.map(() => Infinity);
    this.bestValues = outside
      ? valuesToBeat(row, outside, ground.model, ground.reduced)
      : row.map(() => Infinity);
    ground.session.setColumnBounds(this.lower, this.upper);
    for (const measure of Object.keys(ground.model.row)) if (isMeasure(measure)) this.openRow(measure);
    ground.bench.capGrams((caps.grams ?? Infinity) - ground.reduced.settled.grams);
  }

  constant(measure: Measure): number {
    return constantOf(measure, this.ground.model, this.ground.reduced);
  }

  /** Loss and mass of the best plan known. */
  get known(): Found | null {
    return this.best ?? this.outside;
  }

  /** Keeps the plan if it is within the caps and comes before the best so far. */
  offer(found: Found | null): boolean {
    if (!found || found.loss > (this.caps.loss ?? Infinity) || found.grams > (this.caps.grams ?? Infinity)) {
      return false;
    }
    const values = this.row.map((measure) => valueOf(measure, found, this.ground.model, this.ground.reduced));
    if (comesBefore(values, this.localValues)) {
      this.local = found;
      this.localValues = values;
    }
    if (!comesBefore(values, this.bestValues)) return false;
    this.best = found;
    this.bestValues = values;
    return true;
  }

  report(bound: number): void {
    const [first] = this.row;
    if (first) this.control.onProgress?.(this.best, bound + this.constant(first));
  }

  stopReason(): 'time' | 'cancel' | null {
    const { shouldStop, until, clock } = this.control;
    if (shouldStop?.()) return 'cancel';
    return until !== undefined && clock && clock() >= until ? 'time' : null;
  }

  limits(): { timeLimit?: number; shouldStop?: () => boolean } {
    const { shouldStop, until, clock } = this.control;
    return {
      ...(until !== undefined && clock ? { timeLimit: Math.max(0.001, until - clock()) } : {}),
      ...(shouldStop ? { shouldStop } : {}),
    };
  }

  /** Row of a measure back to what the caps say. */
  openRow(measure: Measure): void {
    const { reduced, model } = this.ground;
    if (measure === 'loss') this.capRow('loss', (this.caps.loss ?? Infinity) - model.constantLoss + HELD);
    else if (measure === 'grams') this.capRow('grams', (this.caps.grams ?? Infinity) - reduced.settled.grams);
    else this.capRow(measure, Infinity);
  }

  capRow(measure: Measure, limit: number): void {
    const row = this.ground.model.row[measure];
    if (row < 0 || this.rowUpper[row] === limit) return;
    this.rowUpper[row] = limit;
    this.ground.session.setRowBounds(row, -Infinity, limit);
  }

  /** Bound and reduced costs from a relaxed answer's duals, recomputed here. */
  certify(
    measure: Measure,
    rowDual: Float64Array | undefined,
    lower: Float64Array = this.lower,
    upper: Float64Array = this.upper,
  ): CertifiedBound {
    const { linear, cost } = this.ground.model;
    const dual = rowDual ?? new Float64Array(linear.rowLower.length);
    return certifiedBound({ ...linear, lower, upper, rowUpper: this.rowUpper }, dual, cost[measure]);
  }

  /** Caps for rounding by hand: earlier measures at the best known. */
  goal(level: number): Caps {
    let { loss, grams } = this.caps;
    const { known } = this;
    if (known && level > 0) {
      const earlier = this.row.slice(0, level);
      if (earlier.includes('loss')) loss = known.loss;
      if (earlier.includes('grams') || earlier.includes('tie')) grams = known.grams;
    }
    return { ...(loss === undefined ? {} : { loss }), ...(grams === undefined ? {} : { grams }) };
  }
}

function comesBefore(values: readonly number[], others: readonly number[]): boolean {
  const at = values.findIndex((value, i) => value !== others[i]);
  return at >= 0 && (values[at] ?? 0) < (others[at] ?? 0);
}

function isMeasure(text: string): text is Measure {
  return text === 'loss' || text === 'grams' || text === 'pieces' || text === 'tie' || text === 'cents';
}
