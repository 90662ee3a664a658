import type { LinearModel, SolveOptions, SolverAnswer } from '@waymend/core/choosing/solver-port';
import type {
  Highs,
  HighsCallbackMap,
  InterruptCallbackEvent,
  Model,
  ModelData,
  PassiveCallbackEvent,
} from 'highs';

/**
 * The four settings that make "optimal" mean optimal. With the default gap (1e-4 relative) about one small kit in forty
 * is not the best one; with these, none of 2,000 checked by exhaustive search.
 */
export const EXACT = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
} as const;

export function modelData(model: LinearModel, relax: boolean): ModelData {
  const numCols = model.cost.length;
  const numRows = model.rowLower.length;
  return {
    numCols,
    numRows,
    colCost: model.cost,
    colLower: model.lower,
    colUpper: model.upper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: {
      format: 'csr',
      numRows,
      numCols,
      starts: model.start,
      indices: model.column,
      values: model.value,
    },
    ...(relax ? {} : { integrality: Int32Array.from(model.integer) }),
  };
}

/** Builds, solves and disposes one model. */
export function solveOnce(highs: Highs, model: LinearModel, options: SolveOptions): SolverAnswer {
  const relax = options.relax ?? !model.integer.includes(1);
  if (model.cost.length === 0) return withoutColumns(model, options);
  return highs.withModel(modelData(model, relax), (live) => {
    live.options.set(EXACT);
    if (options.timeLimit !== undefined) live.options.set('time_limit', Math.max(0, options.timeLimit));
    if (!relax) {
      if (options.absoluteGap !== undefined) live.options.set('mip_abs_gap', options.absoluteGap);
      if (options.cutoff !== undefined) live.options.set('objective_bound', options.cutoff);
      if (options.start) live.setSolution({ colValue: options.start });
    }
    live.run(callbacks(highs, options));
    if (live.getModelStatus() === highs.constants.modelStatus.unboundedOrInfeasible) {
      // Presolve may stop at "one or the other"; without it the solver says which.
      live.options.set('presolve', 'off');
      live.run(callbacks(highs, options));
    }
    return relax ? relaxedAnswer(highs, live, options.cutoff) : integerAnswer(highs, live, options.cutoff);
  });
}

/** HiGHS calls a model without columns "empty" whatever its rows say. */
export function withoutColumns(model: LinearModel, options: SolveOptions): SolverAnswer {
  const possible = model.rowLower.every((lower, row) => lower <= 0 && (model.rowUpper[row] ?? 0) >= 0);
  if (!possible || 0 > (options.cutoff ?? 0)) return { kind: 'infeasible' };
  return {
    kind: 'optimal',
    x: new Float64Array(0),
    objective: 0,
    reducedCost: new Float64Array(0),
    rowDual: new Float64Array(model.rowLower.length),
  };
}

/** Nothing here calls the solver: a solve inside a callback corrupts the module. */
export function callbacks(highs: Highs, options: SolveOptions): HighsCallbackMap {
  const { shouldStop, onProgress } = options;
  const type = highs.constants.callbackType;
  const tell = (primal: number | undefined, dual: number | undefined): void => {
    const incumbent = primal !== undefined && Math.abs(primal) < 1e300 ? primal : null;
    onProgress?.({ incumbent, bound: dual !== undefined && Math.abs(dual) < 1e300 ? dual : -Infinity });
  };
  const stopWhenAsked = (event: InterruptCallbackEvent): undefined => {
    if (shouldStop?.()) event.interrupt();
  };
  const tellBounds = (event: PassiveCallbackEvent): undefined => {
    tell(event.data.mip_primal_bound, event.data.mip_dual_bound);
  };
  const stopping: HighsCallbackMap = {
    [type.simplexInterrupt]: stopWhenAsked,
    [type.mipInterrupt]: stopWhenAsked,
  };
  const telling: HighsCallbackMap = {
    [type.mipImprovingSolution]: tellBounds,
    [type.mipLogging]: tellBounds,
  };
  return { ...(shouldStop ? stopping : {}), ...(onProgress ? telling : {}) };
}

export function relaxedAnswer(highs: Highs, live: Model, cutoff = Infinity): SolverAnswer {
  const status = highs.constants.modelStatus;
  switch (live.getModelStatus()) {
    case status.optimal: {
      const objective = live.getObjectiveValue();
      if (objective > cutoff) return { kind: 'infeasible' };
      const { colValue, colDual, rowDual } = live.getSolution();
      return { kind: 'optimal', x: colValue, objective, reducedCost: colDual, rowDual };
    }
    case status.infeasible:
      return { kind: 'infeasible' };
    case status.unbounded:
      return { kind: 'unbounded' };
    case status.timeLimit:
    case status.iterationLimit:
    case status.interrupted:
      return { kind: 'stopped', x: null, objective: null, bound: -Infinity };
    default:
      return { kind: 'failed', cause: `relaxation ended with status ${live.getModelStatus()}` };
  }
}

function integerAnswer(highs: Highs, live: Model, cutoff = Infinity): SolverAnswer {
  const status = highs.constants.modelStatus;
  const incumbent = (): { x: Float64Array; objective: number } | null => {
    if (live.info.get('primal_solution_status') !== highs.constants.solutionStatus.feasible) return null;
    const objective = live.getObjectiveValue();
    // Points above the cut-off may be found on the way; they are not wanted.
    return objective > cutoff ? null : { x: live.getSolution().colValue, objective };
  };
  switch (live.getModelStatus()) {
    case status.optimal: {
      const found = incumbent();
      return found ? { kind: 'optimal', ...found } : { kind: 'infeasible' };
    }
    case status.infeasible:
    case status.objectiveBound:
      return { kind: 'infeasible' };
    case status.unbounded:
      return { kind: 'unbounded' };
    case status.timeLimit:
    case status.iterationLimit:
    case status.solutionLimit:
    case status.interrupted: {
      const bound = Number(live.info.get('mip_dual_bound'));
      const found = incumbent();
      return {
        kind: 'stopped',
        x: found?.x ?? null,
        objective: found?.objective ?? null,
        bound: Math.abs(bound) < 1e300 ? bound : -Infinity,
      };
    }
    default:
      return { kind: 'failed', cause: `search ended with status ${live.getModelStatus()}` };
  }
}
