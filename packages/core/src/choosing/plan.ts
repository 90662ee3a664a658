import { clashesOf } from './clashes.ts';
import type { Caps, Control } from './hunt.ts';
import { measuresOf } from './measures.ts';
import type { Aim, Choice, Outcome, Problem } from './problem.ts';
import { reduce, unreduced } from './reduce/reduce.ts';
import type { Reduced } from './reduce/reduce.ts';
import { Search } from './search.ts';
import type { SearchSettings } from './search.ts';
import type { Solver } from './solver-port.ts';
import { assertWellFormed } from './well-formed.ts';
import type { Found } from './workbench.ts';

export interface PlanOptions extends SearchSettings {
  /** Seconds; needs `clock`, a count of seconds, because core has no clock of its own. */
  readonly timeLimit?: number;
  readonly clock?: () => number;
  /** Asked between steps; true stops with the best plan so far. */
  readonly shouldStop?: () => boolean;
  /** A better plan, or a better bound on what the aim puts first. */
  readonly onProgress?: (progress: PlanProgress) => void;
  /** `false` solves the problem as it is, for checks. */
  readonly reduce?: boolean;
}

export interface PlanProgress {
  readonly choice: Choice | null;
  readonly loss: number | null;
  readonly grams: number | null;
  readonly bound: number;
}

/** A problem solved as it is stays as it is. */
export const NEVER_SHRUNK: SearchSettings = { shrinkFrom: Infinity };

/**
 * The best choice for an aim, proven; or the best found when stopped, with a certified bound; or why there is none.
 * Loss, grams, pieces and cents are settled one after the other by successive solves, never by weights between them.
 * Loss in whole SCORE_UNITs, mass in whole grams.
 */
export function plan(problem: Problem, aim: Aim, solver: Solver, options: PlanOptions = {}): Outcome {
  assertWellFormed(problem);
  const reduced = options.reduce === false ? unreduced(problem) : reduce(problem, aim);
  const search = new Search(reduced, solver, {
    ...(options.reduce === false ? NEVER_SHRUNK : {}),
    ...options,
  });
  const control = controlOf(reduced, options);
  try {
    const caps: Caps = aim.kind === 'least-mass' ? { loss: aim.maxLoss } : {};
    const answer = search.minimise(measuresOf(aim, search.ground.model), caps, [], control);
    switch (answer.kind) {
      case 'proven':
        return { kind: 'proven', ...asRaw(reduced, answer.found) };
      case 'infeasible':
        return { kind: 'no-plan', ...clashesOf(problem, aim, solver, control) };
      case 'failed':
        return answer;
      case 'stopped':
        if (!answer.found)
          return { kind: 'failed', cause: `stopped by ${answer.by} before any plan was found` };
        return { kind: 'within', ...asRaw(reduced, answer.found), bound: answer.bound, stoppedBy: answer.by };
    }
  } finally {
    search.close();
  }
}

/** Loss and grams are those of the whole problem already: settled pieces are counted in every plan found. */
function asRaw(
  reduced: Reduced,
  { choice, loss, grams }: Found,
): { choice: Choice; loss: number; grams: number } {
  return { choice: reduced.lift(choice), loss, grams };
}

export function controlOf(reduced: Reduced, options: PlanOptions): Control {
  const { timeLimit, clock, shouldStop, onProgress } = options;
  if (timeLimit !== undefined && !clock) throw new Error('a time limit needs a clock');
  return {
    ...(shouldStop ? { shouldStop } : {}),
    ...(timeLimit !== undefined && clock ? { until: clock() + timeLimit, clock } : {}),
    ...(onProgress
      ? {
          onProgress: (found: Found | null, bound: number) =>
            onProgress({
              choice: found ? reduced.lift(found.choice) : null,
              loss: found?.loss ?? null,
              grams: found?.grams ?? null,
              bound,
            }),
        }
      : {}),
  };
}
