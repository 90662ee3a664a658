import type { LinearModel, RelaxedSession, SolverAnswer } from '@waymend/core/choosing/solver-port';
import type { Highs, Model } from 'highs';
import { EXACT, callbacks, modelData, relaxedAnswer, withoutColumns } from './highs-solve.ts';

/** Seconds; option values must be finite. */
const UNLIMITED = 1e9;

/**
 * A relaxation kept in HiGHS. After a change of costs or bounds the simplex goes on from the last basis: below a
 * millisecond where a first solve takes twenty. If the module was thrown away in the meantime the model is built anew.
 */
export function openHighsSession(
  current: () => Highs | null,
  guarded: (work: (live: Highs) => SolverAnswer) => SolverAnswer,
  model: LinearModel,
): RelaxedSession {
  let home: Highs | null = null;
  let live: Model | null = null;
  // What the model is now, to build it anew when the module had to be replaced.
  // Copies: a caller that narrows its own bounds in place must be seen to have changed them.
  let now: LinearModel = {
    ...model,
    cost: model.cost.slice(),
    lower: model.lower.slice(),
    upper: model.upper.slice(),
    rowLower: model.rowLower.slice(),
    rowUpper: model.rowUpper.slice(),
  };
  let closed = false;
  /** As it stands in the live model; options are looked up by name, which takes time at every node. */
  let limit = UNLIMITED;

  const attached = (highs: Highs): Model => {
    if (live && home === highs) return live;
    home = highs;
    live = highs.createModel(modelData(now, true));
    // Presolve would throw the basis away; the first solve is no slower without it at these sizes.
    live.options.set({ ...EXACT, presolve: 'off', time_limit: UNLIMITED });
    limit = UNLIMITED;
    return live;
  };
  const whenAttached = (change: (to: Model) => void): void => {
    if (live && home === current()) change(live);
  };

  return {
    setCost(cost) {
      if (areEqual(cost, now.cost)) return;
      now = { ...now, cost: cost.slice() };
      whenAttached((to) => to.changeColsCost({ kind: 'range', from: 0, to: cost.length - 1 }, cost));
    },
    setRowBounds(row, lower, upper) {
      now.rowLower[row] = lower;
      now.rowUpper[row] = upper;
      whenAttached((to) => to.changeRowBounds(row, lower, upper));
    },
    setColumnBounds(lower, upper) {
      if (areEqual(lower, now.lower) && areEqual(upper, now.upper)) return;
      now = { ...now, lower: lower.slice(), upper: upper.slice() };
      whenAttached((to) =>
        to.changeColsBounds({ kind: 'range', from: 0, to: lower.length - 1 }, lower, upper),
      );
    },
    solve(options = {}) {
      if (closed) throw new Error('the session is closed');
      if (now.cost.length === 0) return withoutColumns(now, {});
      return guarded((highs) => {
        const to = attached(highs);
        const { timeLimit = UNLIMITED } = options;
        // The limit counts from the clock's last zero.
        if (timeLimit < UNLIMITED) to.raw.zeroAllClocks();
        if (timeLimit !== limit) to.options.set('time_limit', timeLimit);
        limit = timeLimit;
        to.run(callbacks(highs, options));
        const answer = relaxedAnswer(highs, to);
        if (answer.kind !== 'failed') return answer;
        // Now and then a basis carried over a change of costs leads nowhere: once more, from nothing.
        to.clearSolver();
        to.run(callbacks(highs, options));
        return relaxedAnswer(highs, to);
      });
    },
    close() {
      closed = true;
      if (live && home === current()) live.dispose();
      live = null;
    },
  };
}

function areEqual(a: Float64Array, b: Float64Array): boolean {
  return a.length === b.length && a.every((value, i) => value === b[i]);
}
