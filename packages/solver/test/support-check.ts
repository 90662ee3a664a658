import { bruteForce, criteria } from '@waymend/core/choosing/brute-force';
import { evaluate } from '@waymend/core/choosing/evaluate';
import type { Aim, Outcome, Problem } from '@waymend/core/choosing/problem';
import { randomProblem } from '@waymend/core/choosing/random-problem';

/** Small problems of every kind: sets, prices, pins, floors, counts, ties, axles. */
export function smallProblem(number: number): Problem {
  return randomProblem({
    number,
    pieces: 4 + (number % 7),
    needs: 9,
    events: 6,
    massShare: 0.25 + 0.1 * (number % 6),
    rows: number % 4,
    forSale: number % 2 === 0 ? 0.35 : 0,
    bundles: number % 5 < 2 ? 1 : 0,
    enough: 0.25,
    must: number % 3,
    pins: 0.08,
    gain: number % 4 === 0 ? 5 : 2000,
    coarse: number % 3 === 0,
  });
}

/**
 * What is wrong with an answer, or null: it must be what trying every subset finds, claim what an exact recount finds, and
 * break nothing.
 */
export function wrongWith(problem: Problem, aim: Aim, outcome: Outcome): string | null {
  const best = bruteForce(problem, aim);
  if (outcome.kind === 'no-plan') return best === null ? null : 'says there is no plan where there is one';
  if (outcome.kind !== 'proven') return `not proven: ${JSON.stringify(outcome)}`;
  const recount = evaluate(problem, outcome.choice);
  const [fault] = recount.faults;
  if (fault) return `breaks the rules: ${JSON.stringify(fault)}`;
  if (recount.grams !== outcome.grams) return `claims ${outcome.grams} g, weighs ${recount.grams} g`;
  if (aim.kind !== 'must-do' && recount.loss !== outcome.loss)
    return `claims a loss of ${outcome.loss}, loses ${recount.loss}`;
  if (best === null) return 'finds a plan where there is none';
  const [found, wanted] = [criteria(aim, recount), criteria(aim, best.evaluation)];
  return found.every((value, i) => value === wanted[i])
    ? null
    : `reaches ${found.join(' ')}, best is ${wanted.join(' ')}`;
}
