import { frontier } from '@waymend/core/choosing/frontier';
import type { FrontierPoint } from '@waymend/core/choosing/frontier';
import { evaluate } from '@waymend/core/choosing/evaluate';
import { plan } from '@waymend/core/choosing/plan';
import type { Problem } from '@waymend/core/choosing/problem';
import { describe, expect, it } from 'vitest';
import { createHighsSolver } from '../src/highs-solver.ts';
import { NOTHING, coverOfTwoProblem, knapsackOfTwoProblem, owned, proven } from './as-problem.ts';
import toy from './data/toy_andor.json';
import { readCover, readKnapsackOfTwo, readPoints } from './read-data.ts';

const solver = await createHighsSolver();

/** The whole front, heavy to light; each point recounted. */
function wholeFront(problem: Problem): readonly FrontierPoint[] {
  const answer = frontier(problem, solver, { points: 'all' });
  if (answer.kind !== 'frontier') throw new Error(JSON.stringify(answer));
  expect(answer.complete).toBe(true);
  for (const { choice, loss, grams, proven: isProven } of answer.points) {
    const recount = evaluate(problem, choice);
    expect(recount.faults).toEqual([]);
    expect({ loss: recount.loss, grams: recount.grams, isProven }).toEqual({ loss, grams, isProven: true });
  }
  return answer.points;
}

/** Sorted by the first of the pair. */
function sorted(points: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  return [...points].sort(([a], [b]) => a - b);
}

const all = (events: Problem['events']): number => events.reduce((sum, { loss }) => sum + loss, 0);

describe('vOptLib 2KP50-11: two profits, one weight, 50 items', () => {
  // vOptLib (MIT), set UKP: the instance, and its published nondominated points in the .min file. As a problem: grams are
  // the second profit left behind (see knapsackOfTwoProblem).
  it('[M9] frontier() draws the published 43 points and no other', () => {
    const published = readPoints('2KP50-11.min');
    expect(published).toHaveLength(43);
    const data = readKnapsackOfTwo('2KP50-11.dat');
    const problem = knapsackOfTwoProblem(data);
    const totals = data.profits.map((of) => of.reduce((sum, one) => sum + one, 0));
    const found = wholeFront(problem).map(
      ({ loss, grams }) => [(totals[0] ?? 0) - loss, (totals[1] ?? 0) - grams] as const,
    );
    expect(sorted(found)).toEqual(sorted(published));
  });
});

describe('vOptLib 2scp11A: set cover with two costs, 10 rows, 100 columns', () => {
  // vOptLib (MIT), set SCP: the instance. Its front is computed, not published: epsilon-constraint with HiGHS 1.12.
  const data = readCover('2scp11A.dat', 2);
  const computed = readPoints('2scp11A.front.txt');

  it('[M9] frontier() draws the computed 39 points and no other', () => {
    expect(data.rows).toHaveLength(10);
    expect(computed).toHaveLength(39);
    const found = wholeFront(coverOfTwoProblem(data)).map(({ loss, grams }) => [grams, loss] as const);
    expect(sorted(found)).toEqual(computed);
  });
});

/** The two written as needs that hold needs: a job's needs, each met by ways of tools. */
function toyProblem(): Problem {
  const index = new Map(toy.tools.map(({ id }, p) => [id, p]));
  const needs = toy.jobs.flatMap((job) =>
    job.needs.map((ways) => ({
      kind: 'any' as const,
      ways: ways.map((tools) => ({ pieces: tools.map((tool) => index.get(tool) ?? -1), needs: [] })),
    })),
  );
  let first = 0;
  const events = toy.jobs.map(({ id, value, needs: asked }) => {
    const option = { needs: asked.map((_, n) => first + n), gain: value, label: id };
    first += asked.length;
    return { id, loss: value, options: [option] };
  });
  return {
    ...NOTHING,
    pieces: toy.tools.map(({ id, kg }) => owned(id, Math.round(kg * 1000))),
    needs,
    events,
  };
}

const mass = (problem: Problem, limit: number) => ({
  id: 'mass',
  limit,
  carried: problem.pieces.map(({ grams }, piece) => ({ piece, weight: grams })),
});

describe('eight tools, five jobs, AND of OR of AND', () => {
  // Made for this project; front by brute force over all 256 kits.
  const problem = toyProblem();

  it('[M9] frontier() draws the whole front of 11 points', () => {
    const found = wholeFront(problem);
    expect(found.map(({ loss, grams }) => ({ kg: grams / 1000, value: all(problem.events) - loss }))).toEqual(
      toy.pareto_bruteforce.map(({ kg, value }) => ({ kg, value })).reverse(),
    );
    const kits = found.map(({ choice }) => choice.carried.map((p) => problem.pieces[p]?.id).sort());
    expect(kits).toEqual(toy.pareto_bruteforce.map(({ kit }) => kit).reverse());
  });

  it('[M6] the best value within 5 kg is 61', () => {
    const limited = { ...problem, limits: [mass(problem, 5000)] };
    const { loss, grams } = proven(limited, plan(limited, { kind: 'best-chance' }, solver));
    expect(all(problem.events) - loss).toBe(toy.best_at_5kg);
    expect(grams).toBe(4000);
  });

  it('[M6] all five jobs take 10.3 kg', () => {
    const every = { ...problem, must: problem.needs.map((_, n) => n) };
    const { choice, grams } = proven(every, plan(every, { kind: 'must-do' }, solver), 'must-do');
    expect(grams).toBe(Math.round(toy.min_weight_all_jobs.kg * 1000));
    const kit = choice.carried.map((p) => problem.pieces[p]?.id).sort();
    expect(kit).toEqual([...toy.min_weight_all_jobs.kit].sort());
  });

  it('[M6] the least mass for a value of 62 is that of the point of 76', () => {
    const aim = { kind: 'least-mass', maxLoss: all(problem.events) - 62 } as const;
    const { loss, grams } = proven(problem, plan(problem, aim, solver));
    expect({ grams, value: all(problem.events) - loss }).toEqual({ grams: 5200, value: 76 });
  });
});
