import { KitState } from './kit-state.ts';
import { compile } from './compile.ts';
import { buildModel } from './model.ts';
import type { ChoiceModel } from './model.ts';
import type { Aim, NeedIndex, PieceIndex, Problem } from './problem.ts';
import { unreduced } from './reduce/reduce.ts';
import { HELD } from './hunt.ts';
import type { Control } from './hunt.ts';
import type { LinearModel, Solver } from './solver-port.ts';

/** Id under which the greatest loss of a least-mass aim is listed among the clashes. */
export const MAX_LOSS = 'max-loss';

export interface Clashes {
  /** Each limit that would by itself make room by giving way, and by how much; when none would, the least that all give together. */
  readonly clashes: readonly { readonly limit: string; readonly shortBy: number }[];
  /** Needs of `must` that nothing on the table meets, whatever the limits. */
  readonly unmeetable?: readonly NeedIndex[];
  /** Pieces pinned to come that cannot be had. */
  readonly unobtainable?: readonly PieceIndex[];
}

/**
 * Why nothing satisfies the limits. First what no limit is to blame for; then, limit by limit, the least violation with all
 * other limits kept (a solve each); if no limit alone is the cause, the violations of one joint solve, weighed by the
 * limits' own sizes.
 */
export function clashesOf(problem: Problem, aim: Aim, solver: Solver, control: Control = {}): Clashes {
  const basic = withoutLimits(problem);
  if (basic.unmeetable || basic.unobtainable) return { clashes: [], ...basic };

  // The unreduced model: reductions use the limits, and here every limit may give way.
  const model = buildModel(unreduced(problem), { form: 'tight' });
  const rows = problem.limits.map((limit, r) => ({
    id: limit.id,
    row: model.limitRows[r] ?? 0,
    size: limit.limit,
  }));
  const capped = capLoss(model, aim);
  if (aim.kind === 'least-mass') rows.push({ id: MAX_LOSS, row: model.row.loss, size: aim.maxLoss });

  const solve = (relaxed: typeof rows) => {
    const { shouldStop, until, clock } = control;
    return solver.solve(withSlack(capped, relaxed), {
      absoluteGap: relaxed.length === 1 ? 0.9 : 0,
      ...(shouldStop ? { shouldStop } : {}),
      ...(until !== undefined && clock ? { timeLimit: Math.max(0.001, until - clock()) } : {}),
    });
  };
  const alone = rows.flatMap((one) => {
    const answer = solve([one]);
    return answer.kind === 'optimal' ? [{ limit: one.id, shortBy: Math.round(answer.objective) }] : [];
  });
  if (alone.length > 0) return { clashes: alone };
  const together = solve(rows);
  if (together.kind !== 'optimal') return { clashes: [] };
  const first = capped.cost.length;
  return {
    clashes: rows.flatMap(({ id }, at) => {
      const shortBy = Math.ceil((together.x[first + at] ?? 0) - 1e-6);
      return shortBy > 0 ? [{ limit: id, shortBy }] : [];
    }),
  };
}

/** With everything that can be had aboard, what is still open was never possible. */
function withoutLimits(problem: Problem): Omit<Clashes, 'clashes'> {
  const state = new KitState(compile(problem));
  const unobtainable: number[] = [];
  problem.pieces.forEach((piece, p) => {
    const had = piece.owned || piece.cents !== null || (piece.bundles ?? []).length > 0;
    if (had && piece.pin !== 'never') state.carry(p);
    if (!had && piece.pin === 'always') unobtainable.push(p);
  });
  const unmeetable = [...new Set(problem.must)].filter((n) => !state.needMet(n));
  return {
    ...(unmeetable.length > 0 ? { unmeetable } : {}),
    ...(unobtainable.length > 0 ? { unobtainable } : {}),
  };
}

function capLoss(model: ChoiceModel, aim: Aim): LinearModel {
  const { linear } = model;
  if (aim.kind !== 'least-mass') return linear;
  const rowUpper = linear.rowUpper.slice();
  rowUpper[model.row.loss] = aim.maxLoss - model.constantLoss + HELD;
  return { ...linear, rowUpper };
}

/** Adds to each listed row a column that takes up its violation, and minimises those (several: each by its own size). */
function withSlack(
  model: LinearModel,
  rows: readonly { readonly row: number; readonly size: number }[],
): LinearModel {
  const size = model.cost.length;
  const slackOf = new Map(rows.map(({ row }, at) => [row, size + at]));
  const start: number[] = [0];
  const column: number[] = [];
  const value: number[] = [];
  for (let row = 0; row < model.rowLower.length; row++) {
    for (let at = model.start[row] ?? 0, end = model.start[row + 1] ?? 0; at < end; at++) {
      column.push(model.column[at] ?? 0);
      value.push(model.value[at] ?? 0);
    }
    const slack = slackOf.get(row);
    if (slack !== undefined) {
      column.push(slack);
      value.push(-1);
    }
    start.push(column.length);
  }
  const grown = (of: Float64Array, fill: number): Float64Array => {
    const longer = new Float64Array(size + rows.length).fill(fill);
    longer.set(of);
    return longer;
  };
  const cost = new Float64Array(size + rows.length);
  rows.forEach((one, at) => {
    cost[size + at] = rows.length === 1 ? 1 : 1 / Math.max(1, Math.abs(one.size));
  });
  const integer = new Uint8Array(size + rows.length);
  integer.set(model.integer);
  return {
    ...model,
    cost,
    lower: grown(model.lower, 0),
    upper: grown(model.upper, Infinity),
    integer,
    start: Int32Array.from(start),
    column: Int32Array.from(column),
    value: Float64Array.from(value),
  };
}
