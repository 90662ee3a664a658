import { easiestMass } from './easiest-mass.ts';
import type { Caps, Control } from './hunt.ts';
import { measuresOf } from './measures.ts';
import type { Measure } from './measures.ts';
import { NEVER_SHRUNK, controlOf } from './plan.ts';
import type { PlanOptions } from './plan.ts';
import type { Choice, Problem } from './problem.ts';
import { reduce, unreduced } from './reduce/reduce.ts';
import type { Reduced } from './reduce/reduce.ts';
import { Search } from './search.ts';
import type { Solver } from './solver-port.ts';
import { supportedMass } from './weighted.ts';
import { assertWellFormed } from './well-formed.ts';
import type { Found } from './workbench.ts';

/** One point of the curve "mass carried against loss" (M9). */
export interface FrontierPoint {
  readonly choice: Choice;
  /** Score units and grams; no choice has less of one without more of the other (when proven). */
  readonly loss: number;
  readonly grams: number;
  readonly pieces: number;
  readonly proven: boolean;
  /** No choice of at most this mass has a loss below this; equal to `loss` when proven. */
  readonly bound: number;
}

export type FrontierAnswer =
  /** Heavy to light. `complete`: every non-dominated point is among them. */
  | {
      readonly kind: 'frontier';
      readonly points: readonly FrontierPoint[];
      readonly complete: boolean;
      readonly stoppedBy?: 'time' | 'cancel';
    }
  /** Not even one plan keeps the limits; `plan` says why. */
  | { readonly kind: 'no-plan' }
  | { readonly kind: 'failed'; readonly cause: string };

export interface FrontierOptions extends Omit<PlanOptions, 'onProgress' | 'roundingOnly'> {
  /** How many points, about; or every non-dominated point there is (small problems). Default 30. */
  readonly points?: number | 'all';
  /** Nodes spent on one point before it is left with its gap. */
  readonly nodesPerPoint?: number;
  readonly onPoint?: (point: FrontierPoint) => void;
}

/**
 * Points between the best plan and the lightest one. First the ends; then, in the widest gap each time, a point that the
 * relaxation with a price on mass supports: such points are nearly always whole, and proving them takes a relaxed solve
 * per measure. Where a gap holds no supported point any more, a cap on the mass half way down it is solved
 * (epsilon-constraint). A gap is closed when it is proven empty. Reduced problem, model, basis and incumbents are shared.
 */
export function frontier(problem: Problem, solver: Solver, options: FrontierOptions = {}): FrontierAnswer {
  assertWellFormed(problem);
  const reduced = options.reduce === false ? unreduced(problem) : reduce(problem, { kind: 'best-chance' });
  const search = new Search(reduced, solver, {
    ...(options.reduce === false ? NEVER_SHRUNK : { shrinkFrom: SHRINK_FROM }),
    ...options,
    mostNodes: options.nodesPerPoint ?? NODES_PER_POINT,
  });
  try {
    const { onPoint: _, ...rest } = options;
    return new Curve(search, reduced, controlOf(reduced, rest), options).draw();
  } finally {
    search.close();
  }
}

const NODES_PER_POINT = 2000;

/** The model and what was learnt on it serve all points, so a point leaves it only for a much smaller one. */
const SHRINK_FROM = 0.15;

interface Gap {
  readonly heavy: FoundPoint;
  readonly light: FoundPoint;
  /** Nothing lies at or below this mass but the light end. */
  readonly emptyTo: number;
  /** No supported point inside. */
  readonly flat: boolean;
}

interface FoundPoint {
  readonly found: Found;
  readonly proven: boolean;
  readonly bound: number;
}

type Solved = FoundPoint | { readonly none: 'infeasible' | 'stopped' | 'failed' };

class Curve {
  private readonly search: Search;
  private readonly reduced: Reduced;
  private readonly control: Control;
  private readonly options: FrontierOptions;
  private readonly byLoss: readonly Measure[];
  private readonly byMass: readonly Measure[];
  private readonly points: FoundPoint[] = [];
  private readonly gaps: Gap[] = [];
  private failed: string | null = null;

  constructor(search: Search, reduced: Reduced, control: Control, options: FrontierOptions) {
    this.search = search;
    this.reduced = reduced;
    this.control = control;
    this.options = options;
    this.byLoss = measuresOf({ kind: 'best-chance' }, search.ground.model);
    this.byMass = measuresOf({ kind: 'least-mass', maxLoss: 0 }, search.ground.model);
  }

  draw(): FrontierAnswer {
    const heavy = this.solve(this.byLoss, {}, []);
    if ('none' in heavy) {
      if (this.failed !== null) return { kind: 'failed', cause: this.failed };
      if (heavy.none === 'infeasible') return { kind: 'no-plan' };
      // Stopped before anything was found: that says nothing about whether there is a plan.
      return { kind: 'frontier', points: [], complete: false, stoppedBy: this.stopReason() ?? 'time' };
    }
    this.keep(heavy);
    const complete = this.options.points === 'all' ? this.everyPoint(heavy) : this.fill(heavy);
    if (this.failed !== null) return { kind: 'failed', cause: this.failed };
    const stopped = complete ? null : this.stopReason();
    return {
      kind: 'frontier',
      points: this.points.sort((a, b) => b.found.grams - a.found.grams).map((point) => this.asRaw(point)),
      complete: complete && this.points.every(({ proven }) => proven),
      ...(stopped ? { stoppedBy: stopped } : {}),
    };
  }

  /** From heavy to light, each time one gram below the last point. */
  private everyPoint(heavy: FoundPoint): boolean {
    let last = heavy;
    while (!this.stopReason()) {
      const next = this.solve(this.byLoss, { grams: last.found.grams - 1 }, []);
      if ('none' in next) return next.none === 'infeasible';
      this.keep(next);
      last = next;
    }
    return false;
  }

  private fill(heavy: FoundPoint): boolean {
    const wanted = this.options.points === 'all' ? Infinity : (this.options.points ?? 30);
    const light = this.solve(this.byMass, {}, [heavy.found]);
    if ('none' in light) return false;
    if (light.found.grams < heavy.found.grams) {
      this.keep(light);
      this.gaps.push({ heavy, light, emptyTo: light.found.grams, flat: false });
    }
    const whole = { grams: heavy.found.grams - light.found.grams, loss: light.found.loss - heavy.found.loss };
    while (
      this.points.length < wanted &&
      this.gaps.length > 0 &&
      !this.stopReason() &&
      this.failed === null
    ) {
      this.split(this.widest(whole.grams, whole.loss));
    }
    return light.proven && this.gaps.length === 0 && this.failed === null;
  }

  /** Takes out the gap that covers most of the picture; gaps that may hold supported points first. */
  private widest(grams: number, loss: number): Gap {
    const size = (gap: Gap): number =>
      ((gap.heavy.found.grams - gap.emptyTo) / grams) *
      ((gap.light.found.loss - gap.heavy.found.loss) / Math.max(1, loss)) *
      (gap.flat ? 0.2 : 1);
    let at = 0;
    this.gaps.forEach((gap, i) => {
      const other = this.gaps[at];
      if (other && size(gap) > size(other)) at = i;
    });
    const [gap] = this.gaps.splice(at, 1);
    if (!gap) throw new Error('there is no gap left');
    return gap;
  }

  private split(gap: Gap): void {
    const { heavy, light, emptyTo, flat } = gap;
    const room = heavy.found.grams - emptyTo;
    if (room <= 1 || light.found.loss <= heavy.found.loss + 1) return;
    if (!flat) {
      const price = (light.found.loss - heavy.found.loss) / (heavy.found.grams - light.found.grams);
      const mass = supportedMass(this.search.ground, price, heavy.found, light.found, this.control);
      if (mass?.found && mass.grams > emptyTo && mass.grams < heavy.found.grams) {
        const middle = this.solve(this.byLoss, { grams: mass.grams }, [mass.found]);
        if (this.divide(gap, middle, mass.grams)) return;
      }
      if (!mass) {
        this.gaps.push({ ...gap, flat: true });
        return;
      }
    }
    const easy = easiestMass(this.search.ground, emptyTo, heavy.found, light.found, this.control);
    const cap = easy?.grams ?? emptyTo + Math.floor(room / 2);
    const middle = this.solve(this.byLoss, { grams: cap }, [easy ?? light.found]);
    if (!this.divide(gap, middle, cap)) this.gaps.push({ ...gap, emptyTo: cap });
  }

  /** Two gaps in place of one, when the solved point is a new one. */
  private divide(gap: Gap, middle: Solved, cap: number): boolean {
    if ('none' in middle || middle.found.grams >= gap.heavy.found.grams) return false;
    if (middle.found.grams <= gap.light.found.grams) return false;
    this.keep(middle);
    const { flat } = gap;
    // Between the point and the cap it was solved for there is nothing.
    this.gaps.push({
      heavy: gap.heavy,
      light: middle,
      emptyTo: middle.proven ? cap : middle.found.grams,
      flat,
    });
    this.gaps.push({ heavy: middle, light: gap.light, emptyTo: gap.emptyTo, flat });
    return true;
  }

  private solve(row: readonly Measure[], caps: Caps, start: readonly Found[]): Solved {
    const answer = this.search.minimise(row, caps, start, this.control);
    switch (answer.kind) {
      case 'proven':
        return { found: answer.found, proven: true, bound: answer.found.loss };
      case 'stopped':
        if (!answer.found) return { none: 'stopped' };
        return {
          found: answer.found,
          proven: false,
          bound: row[0] === 'loss' ? answer.bound : -Infinity,
        };
      case 'infeasible':
        return { none: 'infeasible' };
      case 'failed':
        this.failed = answer.cause;
        return { none: 'failed' };
    }
  }

  private keep(point: FoundPoint): void {
    this.points.push(point);
    this.options.onPoint?.(this.asRaw(point));
  }

  private stopReason(): 'time' | 'cancel' | null {
    const { shouldStop, until, clock } = this.control;
    if (shouldStop?.()) return 'cancel';
    return until !== undefined && clock && clock() >= until ? 'time' : null;
  }

  private asRaw({ found, proven, bound }: FoundPoint): FrontierPoint {
    const { choice, loss, grams, pieces } = found;
    return { choice: this.reduced.lift(choice), loss, grams, pieces, proven, bound };
  }
}
