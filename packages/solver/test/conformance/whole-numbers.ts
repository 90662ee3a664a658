import type { SolveOptions } from '@waymend/core/choosing/solver-port';
import { describe, expect, it } from 'vitest';
import {
  closeKnapsack,
  exhaustive,
  expectVector,
  firstFit,
  heavyKnapsack,
  measure,
  model,
  optimal,
  wideKnapsack,
} from './models.ts';
import type { Row, Small } from './models.ts';
import type { Suite } from './suite.ts';

/** Integer columns: exact optima, cut-offs, gaps and starts. */
export function wholeNumberConformance({ name, create }: Pick<Suite, 'name' | 'create'>): void {
  describe(`${name}: whole numbers`, async () => {
    const solver = await create();
    const solve = (small: Small, options: SolveOptions = {}) => solver.solve(model(small), options);

    it('the best whole point is not the rounded one', () => {
      // max 5x + 8y, x + y <= 6, 5x + 9y <= 45. Relaxed (2.25, 3.75), value 41.25; rounded (2, 4) breaks the second row,
      // (2, 3) is worth 34. Best: (0, 5), worth 40.
      const small: Small = {
        cost: [-5, -8],
        rows: [
          [-Infinity, [1, 1], 6],
          [-Infinity, [5, 9], 45],
        ],
        integer: [true, true],
      };
      const answer = optimal(solve(small));
      expect(answer.objective).toBeCloseTo(-40, 9);
      expectVector(answer.x, [0, 5]);
      const relaxed = optimal(solve(small, { relax: true }));
      expect(relaxed.objective).toBeCloseTo(-41.25, 9);
      expectVector(relaxed.x, [2.25, 3.75]);
    });

    it('whole and other columns together', () => {
      // max 3x + y, x whole, 2x + y <= 7.5, y <= 2: x = 3 leaves y = 1.5, worth 10.5; x = 2, y = 2 is worth 8.
      const answer = optimal(
        solve({
          cost: [-3, -1],
          rows: [[-Infinity, [2, 1], 7.5]],
          upper: [10, 2],
          integer: [true, false],
        }),
      );
      expectVector(answer.x, [3, 1.5]);
    });

    it('no whole point: sixes and tens never make fifteen', () => {
      const small: Small = {
        cost: [1, 1],
        rows: [[15, [6, 10], 15]],
        upper: [100, 100],
        integer: [true, true],
      };
      expect(solve(small).kind).toBe('infeasible');
      expect(optimal(solve(small, { relax: true })).objective).toBeCloseTo(1.5, 9);
    });

    it('large coefficients do not leak: one unit too heavy is too heavy', () => {
      // With tolerances of a millionth, a third of these come out one unit over their limit and worth too much.
      for (let number = 1; number <= 15; number++) {
        const of = heavyKnapsack(number);
        const answer = optimal(solver.solve(of));
        expect(measure(of, answer.x.map(Math.round)).broken, `number ${number}`).toBe(0);
        expect(Math.round(answer.objective), `number ${number}`).toBe(exhaustive(of));
      }
    });

    it('a yes-or-no column is not yes by a millionth', () => {
      // x = 1 needs 1,000,000 y >= 1: y must be 1, not a millionth.
      const answer = optimal(
        solve({
          cost: [0, 1],
          rows: [[0, [-1, 1e6], Infinity]],
          lower: [1, 0],
          upper: [1, 1],
          integer: [false, true],
        }),
      );
      expectVector(answer.x, [1, 1]);
    });

    it('whole columns below 0', () => {
      // min x with 3x >= -10, x whole: -3.
      const small: Small = { cost: [1], rows: [[-10, [3], Infinity]], lower: [-9], integer: [true] };
      expectVector(optimal(solve(small)).x, [-3]);
    });

    it('unbounded, and infeasible, with whole columns', () => {
      expect(solve({ cost: [-1], rows: [], integer: [true] }).kind).toBe('unbounded');
      expect(solve({ cost: [-1, 0], rows: [[-Infinity, [1, -1], 4.5]], integer: [true, true] }).kind).toBe(
        'unbounded',
      );
      const rows: readonly Row[] = [[0.4, [1], 0.6]];
      expect(solve({ cost: [1], rows, upper: [1], integer: [true] }).kind).toBe('infeasible');
    });

    it('one in 1.2 million still counts: 30 knapsacks of near-equal plans against every subset', () => {
      for (let number = 1; number <= 30; number++) {
        const of = closeKnapsack(number);
        const answer = optimal(solver.solve(of));
        const { objective, broken } = measure(of, answer.x);
        expect(broken).toBeLessThan(1e-6);
        expect(Math.round(objective), `number ${number}`).toBe(exhaustive(of));
        expect(answer.objective).toBeCloseTo(objective, 4);
      }
    });

    it('cut-off: at the optimum it is found, below it there is nothing', () => {
      for (let number = 1; number <= 5; number++) {
        const of = closeKnapsack(number);
        const best = exhaustive(of);
        expect(Math.round(optimal(solver.solve(of, { cutoff: best + 0.5 })).objective)).toBe(best);
        expect(solver.solve(of, { cutoff: best - 0.5 }).kind).toBe('infeasible');
      }
    });

    it('a gap below 1 loses nothing when objectives are whole; a wider one stops within it', () => {
      // Numbers 63, 100 and 150 are such that a search told to stop within 2.5 may stop short of the best.
      for (const number of [61, 62, 63, 64, 99, 100, 101, 149, 150, 151]) {
        const of = wideKnapsack(number);
        const best = Math.round(optimal(solver.solve(of)).objective);
        expect(Math.round(optimal(solver.solve(of, { absoluteGap: 0.9 })).objective)).toBe(best);
        expect(optimal(solver.solve(of, { absoluteGap: 2.5 })).objective).toBeLessThanOrEqual(best + 2.5);
      }
    });

    it('takes a start, good, poor or impossible, and finds the same optimum', () => {
      const of = closeKnapsack(3);
      const best = exhaustive(of);
      const first = optimal(solver.solve(of)).x;
      for (const start of [first, firstFit(of), new Float64Array(12), new Float64Array(12).fill(1)]) {
        const given = start.slice();
        expect(Math.round(optimal(solver.solve(of, { start })).objective)).toBe(best);
        expect(start).toEqual(given);
      }
    });

    it('does not write into the model', () => {
      const of = closeKnapsack(2);
      const copy = structuredClone(of);
      solver.solve(of);
      solver.solve(of, { relax: true });
      expect(of).toEqual(copy);
    });
  });
}
