import { SCORE_UNIT } from './problem.ts';
import type { Problem } from './problem.ts';

/** The un-reduced problem as JSON (docs/problem.md): everything another solver, or a patient person, needs to check an answer. */
export function problemJson(problem: Problem): string {
  return `${JSON.stringify({ schema: 'waymend.problem/1', scoreUnitNepers: SCORE_UNIT, ...problem }, null, 1)}\n`;
}
