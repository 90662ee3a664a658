import { Experience } from './experience.ts';
import { Hunt } from './hunt.ts';
import type { Caps, Control, Ground } from './hunt.ts';
import type { Measure } from './measures.ts';
import { buildModel } from './model.ts';
import type { Reduced } from './reduce/reduce.ts';
import { greedyPlan } from './rounding.ts';
import { relaxedSession } from './relaxed-session.ts';
import type { Solver } from './solver-port.ts';
import { shrunk } from './shrink.ts';
import { settleInTurn } from './staged.ts';
import { growTree } from './tree.ts';
import type { TreeEnd } from './tree.ts';
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
  /** Share of the columns that must be ruled out at the root before the rest becomes a problem of its own; above 1: never. */
  readonly shrinkFrom?: number;
}

/** Beyond this the integer solver, with its cuts, is faster. */
const MOST_NODES = 2000;

/** Share of the columns that must be ruled out at the root before the rest is worth a model of its own. */
const SHRINK_FROM = 0.08;

/** Share of the problem that may be left when the rest is made a problem of its own. */
const MOST_LEFT = 0.95;

/** A reduced problem, its model kept in the solver, and a workbench: everything that several solves can share. */
export class Search {
  readonly ground: Ground;
  private readonly settings: SearchSettings;

  constructor(reduced: Reduced, solver: Solver, settings: SearchSettings = {}) {
    this.settings = settings;
    this.ground = openGround(reduced, solver, settings.form ?? 'tight');
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
    const end = settle(hunt, this.settings);
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

/** About the columns of its model. */
function sizeOf({ problem }: Reduced): number {
  const ways = problem.needs.reduce((sum, need) => sum + (need.kind === 'any' ? need.ways.length : 1), 0);
  return problem.events.reduce((sum, { options }) => sum + options.length, problem.pieces.length + ways);
}

function openGround(reduced: Reduced, solver: Solver, form: 'plain' | 'tight', priced?: boolean): Ground {
  const model = buildModel(reduced, { form, ...(priced === undefined ? {} : { priced }) });
  return {
    reduced,
    model,
    bench: new Workbench(reduced),
    solver,
    session: relaxedSession(solver, model.linear),
    experience: new Experience(model.linear.cost.length, model.linear.column),
  };
}

/** Tree, then integer solver; what the root leaves of the problem is settled as a problem of its own when it is smaller. */
function settle(hunt: Hunt, settings: SearchSettings): TreeEnd {
  const { mostNodes = MOST_NODES, roundingOnly = false, form = 'tight' } = settings;
  // An answer in ties (must-do) has no bound that could be carried from one model to the other.
  const shrinkable = form === 'tight' && mostNodes > 0 && hunt.row[0] !== 'tie';
  const shrinkFrom = shrinkable ? (settings.shrinkFrom ?? SHRINK_FROM) : Infinity;
  const end = growTree(hunt, { mostNodes, roundingOnly, shrinkFrom });
  if (end.kind === 'too-many') return settleInTurn(hunt);
  return end.kind === 'shrinks' ? settleRest(hunt, end.lower, end.upper, settings) : end;
}

function settleRest(hunt: Hunt, lower: Float64Array, upper: Float64Array, settings: SearchSettings): TreeEnd {
  const { ground, row, control } = hunt;
  const rest = shrunk(ground.reduced, ground.model, lower, upper);
  if (rest.impossible) return { kind: 'proven' };
  // What was ruled out may have been idle already; then the smaller problem would only be built for nothing.
  if (sizeOf(rest) > MOST_LEFT * sizeOf(ground.reduced))
    return settle(hunt, { ...settings, shrinkFrom: Infinity });
  const lifted = (found: Found): Found => ({ ...found, choice: rest.lift(found.choice) });
  const { onProgress, ...when } = control;
  const within: Control = onProgress
    ? { ...when, onProgress: (found, bound) => onProgress(found ? lifted(found) : hunt.best, bound) }
    : when;
  const inner = openGround(rest, ground.solver, 'tight', row.includes('cents'));
  try {
    const hunted = new Hunt(inner, row, hunt.caps, within, hunt.known);
    const end = settle(hunted, settings);
    // A plan counts only after a recount where it is handed on to.
    if (hunted.best && !hunt.offer(ground.bench.measure(rest.lift(hunted.best.choice))))
      return { kind: 'failed', cause: 'a plan of the smaller problem is none of the larger' };
    const [first] = row;
    if (end.kind === 'proven' || end.kind === 'failed' || !first) return end;
    return { ...end, bound: end.bound + hunted.constant(first) - hunt.constant(first) };
  } finally {
    inner.session.close();
  }
}
