import { plan } from '@waymend/core/choosing/plan';
import type { Need, Option, Problem } from '@waymend/core/choosing/problem';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { smallProblem, wrongWith } from './support-check.ts';

const solver = await createHighsSolver();

/**
 * Five ways to get the model wrong. Each planner below solves a falsified problem and hands in its answer for the true one;
 * the check that the other tests of this folder rely on must find every one of them out.
 */
const MUTANTS: readonly (readonly [string, (problem: Problem) => Problem])[] = [
  [
    'an option forgets one of its needs',
    (problem) => onOptions(problem, (o) => ({ ...o, needs: o.needs.slice(1) })),
  ],
  [
    'a piece counts twice',
    (problem) =>
      onNeeds(problem, (need) =>
        need.kind === 'enough'
          ? { ...need, from: need.from.map((part) => ({ ...part, units: 2 * part.units })) }
          : { ...need, ways: need.ways.map((way) => ({ ...way, pieces: way.pieces.slice(0, 1) })) },
      ),
  ],
  ['a limit is ignored', (problem) => ({ ...problem, limits: problem.limits.slice(1) })],
  [
    'the levels of an event are in the wrong order',
    (problem) => ({
      ...problem,
      events: problem.events.map((event) => {
        const gains = event.options.map(({ gain }) => gain).reverse();
        return { ...event, options: event.options.map((option, i) => ({ ...option, gain: gains[i] ?? 0 })) };
      }),
    }),
  ],
  ['what must be is forgotten', (problem) => ({ ...problem, must: [] })],
];

function onOptions(problem: Problem, change: (option: Option) => Option): Problem {
  const events = problem.events.map((event) => ({ ...event, options: event.options.map(change) }));
  return { ...problem, events };
}

function onNeeds(problem: Problem, change: (need: Need) => Need): Problem {
  return { ...problem, needs: problem.needs.map(change) };
}

const faultsOf = (mutate: (problem: Problem) => Problem): number => {
  let caught = 0;
  for (let number = 1; number <= 60; number++) {
    const problem = smallProblem(number);
    const outcome = plan(mutate(problem), { kind: 'best-chance' }, solver);
    if (wrongWith(problem, { kind: 'best-chance' }, outcome) !== null) caught++;
  }
  return caught;
};

describe('planners that are wrong on purpose', () => {
  it.each(MUTANTS)('[M8] is found out: %s', (_, mutate) => {
    expect(faultsOf(mutate)).toBeGreaterThan(5);
  });

  it('[M8] the planner itself is found in order on the same problems', () => {
    expect(faultsOf((problem) => problem)).toBe(0);
  });
});
