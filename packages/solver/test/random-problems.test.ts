import { bruteForce } from '@waymend/core/choosing/brute-force';
import { evaluate } from '@waymend/core/choosing/evaluate';
import type { Evaluation } from '@waymend/core/choosing/evaluate';
import { frontier } from '@waymend/core/choosing/frontier';
import { plan } from '@waymend/core/choosing/plan';
import type { Aim, Outcome, Problem } from '@waymend/core/choosing/problem';
import { randomProblem } from '@waymend/core/choosing/random-problem';
import { workshopProblem } from '@waymend/core/choosing/workshop-problem';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';

const solver = await createHighsSolver();

/** Small problems with everything in them: sets, prices, pins, floors, units, ties, negative weights. */
function small(number: number): Problem {
  return randomProblem({
    number,
    pieces: 6 + (number % 5),
    needs: 10,
    events: 6,
    massShare: 0.25 + (number % 4) * 0.15,
    rows: number % 3,
    forSale: number % 2 === 0 ? 0.3 : 0,
    bundles: number % 5 === 0 ? 1 : 0,
    enough: 0.2,
    must: number % 3 === 0 ? 1 : 0,
    pins: 0.08,
    gain: number % 4 === 0 ? 5 : 1000,
    coarse: number % 2 === 0,
  });
}

function figures(outcome: Outcome): string {
  return outcome.kind === 'proven'
    ? `${outcome.loss} ${outcome.grams} ${outcome.choice.carried.length}`
    : outcome.kind;
}

function counted({ loss, grams, pieces, cents }: Evaluation): string {
  return `${loss} ${grams} ${pieces} ${cents}`;
}

describe('choosing against every subset', () => {
  it('[M6] the planner and brute force agree exactly on loss, grams and pieces of 2,000 random problems', () => {
    const wrong: string[] = [];
    for (let number = 1; number <= 2000; number++) {
      const problem = small(number);
      const aim: Aim = { kind: 'best-chance' };
      const best = bruteForce(problem, aim);
      const truth =
        best === null
          ? 'no-plan'
          : `${best.evaluation.loss} ${best.evaluation.grams} ${best.evaluation.pieces}`;
      const found = figures(plan(problem, aim, solver));
      if (found !== truth) wrong.push(`#${number}: ${found}, not ${truth}`);
    }
    expect(wrong).toEqual([]);
  });

  it('[M8] what is ruled out at the root may go however little it is: 300 random problems, shrunk again and again', () => {
    const wrong: string[] = [];
    for (let number = 1; number <= 300; number++) {
      const problem = small(number);
      for (const aim of [{ kind: 'best-chance' }, { kind: 'least-mass', maxLoss: 900 }] as const) {
        const best = bruteForce(problem, aim);
        const found = plan(problem, aim, solver, { shrinkFrom: 0 });
        const truth = best === null ? 'no-plan' : counted(best.evaluation);
        const said = found.kind === 'proven' ? counted(evaluate(problem, found.choice)) : found.kind;
        if (said !== truth) wrong.push(`#${number} ${aim.kind}: ${said}, not ${truth}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('[M9] the curve of small problems holds every non-dominated point, each proven', () => {
    for (let number = 1; number <= 40; number++) {
      const answer = frontier(small(number), solver, { points: 'all' });
      if (answer.kind !== 'frontier') {
        expect(bruteForce(small(number), { kind: 'best-chance' })).toBeNull();
        continue;
      }
      const points = [...answer.points].sort((a, b) => a.grams - b.grams);
      expect(points.every((p) => p.proven)).toBe(true);
      points.forEach((p, i) => {
        const next = points[i + 1];
        if (next !== undefined) expect(next.loss).toBeLessThan(p.loss);
      });
      const best = bruteForce(small(number), { kind: 'best-chance' });
      expect(points.at(-1)?.loss).toBe(best?.evaluation.loss);
    }
  });
});

describe('reductions', () => {
  it('[M8] the reduced and the raw model agree on 200 medium problems', () => {
    const wrong: string[] = [];
    for (let number = 1; number <= 200; number++) {
      const problem =
        number % 2 === 0
          ? randomProblem({
              number,
              pieces: 30,
              needs: 40,
              events: 25,
              massShare: 0.35,
              rows: 1,
              enough: 0.1,
              gain: 1000,
            })
          : workshopProblem({
              number,
              sizes: 4,
              functions: 8,
              spares: 3,
              jobs: 12,
              events: 12,
              massShare: 0.4,
            });
      const aim: Aim = { kind: 'best-chance' };
      const reduced = figures(plan(problem, aim, solver));
      const shrunk = figures(plan(problem, aim, solver, { shrinkFrom: 0 }));
      const raw = figures(plan(problem, aim, solver, { reduce: false, shrinkFrom: Infinity }));
      if (reduced !== raw || shrunk !== raw) wrong.push(`#${number}: ${reduced}, ${shrunk}, raw ${raw}`);
    }
    expect(wrong).toEqual([]);
  });
});
