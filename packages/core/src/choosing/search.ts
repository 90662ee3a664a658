import { Experience } from './experience.ts';
import { Hunt } from './hunt.ts';
import type { Caps, Control, Ground } from './hunt.ts';
import type { Measure } from './measures.ts';
import { buildModel } from './model.ts';
import type { Reduced } from './reduce/reduce.ts';
import { greedyPlan } from './rounding.ts';
import { relaxedSession } from './relaxed-session.ts';
import type { Solver } from './solver-port.ts';
import { settleInTurn } from './staged.ts';
import { growTree } from './tree.ts';
import { Workbench } from './workbench.ts';
import type { Found } from './workbench.ts';

export type SearchAnswer =
  /** Best in every measure of the row. */
  | { readonly kind: 'proven'; readonly found: Found }
  /** Stopped: `bound` (loss or grams) holds for the first measure; the plan's own value when only ties were left open. */
  | {
      readonly kind: 'stopped';
      readonly found: Found | null;
      readonly bound: number;
      readonly by: 'time' | 'cancel' | 'rounding';
    }
  | { readonly kind: 'infeasible' }
  | { readonly kind: 'failed'; readonly cause: string };

export interface SearchSettings {
  readonly form?: 'plain' | 'tight';
  /** Stop after the first rounding, with its certified gap. */
  readonly roundingOnly?: boolean;
  /** Nodes of the own tree before the integer solver takes over; 0 leaves everything to the solver. */
  readonly mostNodes?: number;
}

/** Beyond this the integer solver, with its cuts, is faster. */
const MOST_NODES = 2000;

/** A reduced problem, its model kept in the solver, and a workbench: everything that several solves can share. */
export class Search {
  readonly ground: Ground;
  private readonly settings: SearchSettings;

  constructor(reduced: Reduced, solver: Solver, settings: SearchSettings = {}) {
    const model = buildModel(reduced, { form: settings.form ?? 'tight' });
    this.settings = settings;
    this.ground = {
      reduced,
      model,
      bench: new Workbench(reduced),
      solver,
      session: relaxedSession(solver, model.linear),
      experience: new Experience(model.linear.cost.length, model.linear.column),
    };
  }

  close(): void {
    this.ground.session.close();
  }

  /** Minimises the measures, the first first, each among the best of those before it. */
  minimise(
    row: readonly Measure[],
    caps: Caps,
    start: readonly Found[] = [],
    control: Control = {},
  ): SearchAnswer {
    if (this.ground.reduced.impossible) return { kind: 'infeasible' };
    const hunt = new Hunt(this.ground, row, caps, control);
    for (const found of start) hunt.offer(found);
    const { mostNodes = MOST_NODES, roundingOnly = false } = this.settings;
    let end = growTree(hunt, mostNodes, roundingOnly);
    if (end.kind === 'too-many') end = settleInTurn(hunt);
    if (end.kind === 'failed') return end;
    if (end.kind === 'proven')
      return hunt.best ? { kind: 'proven', found: hunt.best } : { kind: 'infeasible' };
    const [first] = row;
    if (!hunt.best && first) hunt.offer(greedyPlan(this.ground.bench, first, caps));
    return {
      kind: 'stopped',
      found: hunt.best,
      bound: end.bound + (first ? hunt.constant(first) : 0),
      by: end.kind === 'stopped' ? end.by : 'time',
    };
  }
}
