import type { LinearModel, RelaxedSession, Solver } from './solver-port.ts';

/** The solver's own session where it has one; otherwise the same answers by whole relaxed solves. */
export function relaxedSession(solver: Solver, model: LinearModel): RelaxedSession {
  if (solver.openRelaxed) return solver.openRelaxed(model);
  let now: LinearModel = {
    ...model,
    rowLower: model.rowLower.slice(),
    rowUpper: model.rowUpper.slice(),
  };
  return {
    setCost(cost) {
      now = { ...now, cost };
    },
    setRowBounds(row, lower, upper) {
      now.rowLower[row] = lower;
      now.rowUpper[row] = upper;
    },
    setColumnBounds(lower, upper) {
      now = { ...now, lower: lower.slice(), upper: upper.slice() };
    },
    solve(options) {
      return solver.solve(now, { ...options, relax: true });
    },
    close() {},
  };
}
