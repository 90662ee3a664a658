import { fixByReducedCost, wholeAbove } from './bound.ts';
import { HELD } from './hunt.ts';
import type { Hunt } from './hunt.ts';
import type { Measure } from './measures.ts';
import { restrict } from './restrict.ts';
import { roundToPlan } from './rounding.ts';
import type { TreeEnd } from './tree.ts';

type Step =
  | { readonly kind: 'settled' }
  | { readonly kind: 'infeasible' }
  | { readonly kind: 'stopped'; readonly bound: number; readonly by: 'time' | 'cancel' }
  | { readonly kind: 'failed'; readonly cause: string };

/**
 * The row of measures settled one after the other by the integer solver: each with the earlier ones closed by cut-offs
 * half a unit above their best values, which is exact for whole numbers. For problems whose tree grows too large: the
 * solver's cuts and conflict analysis then pay for its slower start.
 */
export function settleInTurn(hunt: Hunt): TreeEnd {
  const { session } = hunt.ground;
  for (const measure of hunt.row) hunt.openRow(measure);
  for (const [level, measure] of hunt.row.entries()) {
    const step = settle(hunt, level, measure);
    if (step.kind === 'infeasible') return { kind: 'proven' };
    // Once the first measure is settled, its value is the bound, whatever happens to the ties.
    if (step.kind === 'stopped') {
      return { ...step, bound: level === 0 ? step.bound : (hunt.bestValues[0] ?? -Infinity) };
    }
    if (step.kind === 'failed') return step;
    hunt.capRow(measure, (hunt.bestValues[level] ?? Infinity) + HELD);
    session.setColumnBounds(hunt.lower, hunt.upper);
  }
  return { kind: 'proven' };
}

function settle(hunt: Hunt, level: number, measure: Measure): Step {
  const { model, session, bench } = hunt.ground;
  const value = (): number => hunt.bestValues[level] ?? Infinity;
  session.setColumnBounds(hunt.lower, hunt.upper);
  session.setCost(model.cost[measure]);
  const relaxed = session.solve(hunt.limits());
  if (relaxed.kind === 'infeasible') {
    return hunt.known
      ? { kind: 'failed', cause: 'the relaxation excludes a known plan' }
      : { kind: 'infeasible' };
  }
  if (relaxed.kind === 'stopped')
    return { kind: 'stopped', bound: -Infinity, by: hunt.stopReason() ?? 'time' };
  if (relaxed.kind !== 'optimal') {
    return {
      kind: 'failed',
      cause: relaxed.kind === 'failed' ? relaxed.cause : `the relaxation is ${relaxed.kind}`,
    };
  }
  const certificate = hunt.certify(measure, relaxed.rowDual);
  const bound = wholeAbove(certificate.bound);
  if (value() > bound) {
    for (const found of roundToPlan(bench, model, measure, relaxed, hunt.goal(level))) hunt.offer(found);
  }
  if (value() > bound) {
    const lower = hunt.lower.slice();
    const upper = hunt.upper.slice();
    fixByReducedCost(certificate, value() - 1, lower, upper);
    const end = finishWithSolver(hunt, level, measure, lower, upper, bound);
    if (end.kind !== 'settled') return end;
  }
  // What even equal plans cannot move stays fixed for the measures to come.
  fixByReducedCost(certificate, value(), hunt.lower, hunt.upper);
  return { kind: 'settled' };
}

/** Hands what is left to the integer search, asking only for plans better than the best known. */
function finishWithSolver(
  hunt: Hunt,
  level: number,
  measure: Measure,
  lower: Float64Array,
  upper: Float64Array,
  bound: number,
): Step {
  const { model, solver, bench } = hunt.ground;
  const value = hunt.bestValues[level] ?? Infinity;
  const { linear } = model;
  const rest = restrict(linear, lower, upper, model.cost[measure], linear.rowLower, hunt.rowUpper);
  const noneBetter: Step = hunt.known ? { kind: 'settled' } : { kind: 'infeasible' };
  if (rest.impossible) return noneBetter;
  const better = (of: number): number => Math.max(bound, Math.min(value, wholeAbove(of + rest.constant)));
  const answer = solver.solve(rest.model, {
    ...hunt.limits(),
    ...(Number.isFinite(value) ? { cutoff: value - 0.5 - rest.constant } : {}),
    absoluteGap: 0.9,
    onProgress: (progress) => {
      if (level === 0) hunt.report(better(progress.bound));
    },
  });
  // A solver's point counts only after an exact recount.
  const accept = (x: Float64Array): boolean => hunt.offer(bench.measure(model.choiceOf(rest.expand(x))));
  switch (answer.kind) {
    case 'infeasible':
      return noneBetter;
    case 'optimal':
      return accept(answer.x)
        ? { kind: 'settled' }
        : { kind: 'failed', cause: 'the solver returned a plan that breaks a limit' };
    case 'stopped':
      if (answer.x) accept(answer.x);
      return { kind: 'stopped', bound: better(answer.bound), by: hunt.stopReason() ?? 'time' };
    default:
      return {
        kind: 'failed',
        cause: answer.kind === 'failed' ? answer.cause : `the solver says ${answer.kind}`,
      };
  }
}
