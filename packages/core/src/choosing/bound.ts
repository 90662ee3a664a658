import type { LinearModel } from './solver-port.ts';

/** A lower bound on the objective that holds whatever the solver's tolerances are, and what each column would add to it. */
export interface CertifiedBound {
  readonly bound: number;
  readonly reducedCost: Float64Array;
}

/**
 * Bound from row duals, recomputed from the model alone. For any multipliers y (signs that would meet an infinite side of
 * their row set to 0) and any point x of the model,
 *     c.x = y.Ax + (c - A'y).x >= sum over rows of min(y_i b_i) + sum over columns of min(d_j x_j over its bounds),
 * so even poor duals give a true bound. `x_j` at its far bound adds |d_j| to it. Plain double arithmetic: at these sizes
 * the rounding error is below 1e-6 of a score unit, and every use keeps a margin of 1e-3.
 */
export function certifiedBound(
  { cost: modelCost, lower, upper, rowLower, rowUpper, start, column, value }: LinearModel,
  rowDual: Float64Array,
  cost: Float64Array = modelCost,
): CertifiedBound {
  const reducedCost = cost.slice();
  let bound = 0;
  for (let row = 0; row < rowLower.length; row++) {
    const dual = rowDual[row] ?? 0;
    if (dual === 0) continue;
    const side = (dual > 0 ? rowLower[row] : rowUpper[row]) ?? 0;
    if (!Number.isFinite(side)) continue;
    bound += dual * side;
    for (let at = start[row] ?? 0, end = start[row + 1] ?? 0; at < end; at++) {
      const j = column[at] ?? 0;
      reducedCost[j] = (reducedCost[j] ?? 0) - dual * (value[at] ?? 0);
    }
  }
  for (let j = 0; j < reducedCost.length; j++) {
    const d = reducedCost[j] ?? 0;
    bound += d * ((d > 0 ? lower[j] : upper[j]) ?? 0);
  }
  return { bound, reducedCost };
}

/** Whole-number objectives: the least whole value not below a bound, with a margin for rounding. */
export function wholeAbove(bound: number): number {
  return Math.ceil(bound - 1e-3);
}

/**
 * Reduced-cost fixing. A column whose move to its other bound would lift the bound above `cutoff` keeps its present bound
 * in every point of value <= cutoff. Continuous columns too: in some optimum all of them are whole (./model-needs.ts).
 * Bounds are narrowed in place; returns how many columns were fixed.
 */
export function fixByReducedCost(
  { bound, reducedCost }: CertifiedBound,
  cutoff: number,
  lower: Float64Array,
  upper: Float64Array,
): number {
  const room = cutoff - bound + 1e-3;
  let fixed = 0;
  for (let j = 0; j < reducedCost.length; j++) {
    if (lower[j] === upper[j]) continue;
    const d = reducedCost[j] ?? 0;
    if (d > room) upper[j] = lower[j] ?? 0;
    else if (-d > room) lower[j] = upper[j] ?? 0;
    else continue;
    fixed++;
  }
  return fixed;
}
