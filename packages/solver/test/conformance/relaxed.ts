import type { SolveOptions } from '@waymend/core/choosing/solver-port';
import { describe, expect, it } from 'vitest';
import { expectVector, longKnapsack, measure, model, optimal } from './models.ts';
import type { Row, Small } from './models.ts';
import type { Suite } from './suite.ts';

/** Relaxed models: points, duals and reduced costs; infeasible and unbounded ones. */
export function relaxedConformance({ name, create }: Pick<Suite, 'name' | 'create'>): void {
  describe(`${name}: relaxed models`, async () => {
    const solver = await create();
    const solve = (small: Small, options: SolveOptions = {}) => solver.solve(model(small), options);

    // min 2x + 3y with x + y >= 4, x + 3y >= 6. Both rows hold at x = 3, y = 1: objective 9. Duals u, v >= 0 with
    // u + v = 2 and u + 3v = 3 give v = 1/2, u = 3/2; 4u + 6v = 9 confirms it.
    const twoRows: Small = {
      cost: [2, 3],
      rows: [
        [4, [1, 1], Infinity],
        [6, [1, 3], Infinity],
      ],
    };

    it('two rows that bind: point, objective, duals, no reduced costs', () => {
      const answer = optimal(solve(twoRows));
      expect(answer.objective).toBeCloseTo(9, 9);
      expectVector(answer.x, [3, 1]);
      expectVector(answer.rowDual, [1.5, 0.5]);
      expectVector(answer.reducedCost, [0, 0]);
    });

    it('rows from above have duals of the other sign', () => {
      // min -3x - 5y, x <= 4, 2y <= 12, 3x + 2y <= 18 as rows: the corner (2, 6), objective -36; duals 0, -3/2, -1.
      const answer = optimal(
        solve({
          cost: [-3, -5],
          rows: [
            [-Infinity, [1, 0], 4],
            [-Infinity, [0, 2], 12],
            [-Infinity, [3, 2], 18],
          ],
        }),
      );
      expect(answer.objective).toBeCloseTo(-36, 9);
      expectVector(answer.x, [2, 6]);
      expectVector(answer.rowDual, [0, -1.5, -1]);
    });

    it('columns at their bounds have reduced costs: below 0 at the upper one, above 0 at the lower one', () => {
      // min -4a + 5b + c with a + b + c >= 2, a <= 1.5. a is worth having to its limit; c makes up the rest, so the row's dual
      // is 1, and reduced costs are -4 - 1 = -5, 5 - 1 = 4, 0.
      const answer = optimal(
        solve({ cost: [-4, 5, 1], rows: [[2, [1, 1, 1], Infinity]], upper: [1.5, 9, 9] }),
      );
      expect(answer.objective).toBeCloseTo(-5.5, 9);
      expectVector(answer.x, [1.5, 0, 0.5]);
      expectVector(answer.rowDual, [1]);
      expectVector(answer.reducedCost, [-5, 4, 0]);
    });

    it('strong duality: duals and reduced costs add up to the objective', () => {
      // The identity core's certified bound is made of: c.x = sum of dual x side + sum of reduced cost x bound.
      const of = longKnapsack(40, 4);
      const answer = optimal(solver.solve(of, { relax: true }));
      let bound = 0;
      of.rowUpper.forEach((side, row) => {
        const dual = answer.rowDual?.[row] ?? Number.NaN;
        expect(dual).toBeLessThanOrEqual(1e-9);
        bound += dual * side;
      });
      // Every column lies between 0 and 1: only negative reduced costs count.
      answer.reducedCost?.forEach((d) => {
        bound += Math.min(0, d);
      });
      expect(bound / answer.objective).toBeCloseTo(1, 9);
      expect(measure({ ...of, integer: new Uint8Array(40) }, answer.x).broken).toBeLessThan(1e-8);
    });

    it('ranged rows, equal rows, free and negative columns', () => {
      // x + y = 1 with x free, y >= -3 and 2 <= x - y <= 8: min x is at x - y = 2, so x = 1.5, y = -0.5.
      const small: Small = {
        cost: [1, 0],
        rows: [
          [1, [1, 1], 1],
          [2, [1, -1], 8],
        ],
        lower: [-Infinity, -3],
      };
      const answer = optimal(solve(small));
      expectVector(answer.x, [1.5, -0.5]);
      // And max x: y falls to -3, so x = 4 (x - y = 7, within the range).
      expectVector(optimal(solve({ ...small, cost: [-1, 0] })).x, [4, -3]);
    });

    it('no rows, no columns, a row without entries', () => {
      expectVector(optimal(solve({ cost: [1, -1], rows: [], upper: [3, 3] })).x, [0, 3]);
      expect(optimal(solve({ cost: [], rows: [] })).objective).toBe(0);
      expect(solve({ cost: [], rows: [[1, [], Infinity]] }).kind).toBe('infeasible');
      expect(optimal(solve({ cost: [1], rows: [[-1, [0], 1]] })).objective).toBe(0);
      expect(solve({ cost: [1], rows: [[1, [0], 2]] }).kind).toBe('infeasible');
    });

    it('infeasible: two rows that exclude each other', () => {
      const rows: readonly Row[] = [
        [3, [1, 1], Infinity],
        [-Infinity, [1, 1], 2],
      ];
      expect(solve({ cost: [1, 1], rows }).kind).toBe('infeasible');
      expect(solve({ cost: [-1, 0], rows }).kind).toBe('infeasible');
    });

    it('unbounded: nothing holds the cost', () => {
      expect(solve({ cost: [-1], rows: [] }).kind).toBe('unbounded');
      expect(solve({ cost: [-1, 0], rows: [[-Infinity, [1, -1], 4]] }).kind).toBe('unbounded');
    });

    it('relaxing drops integrality, and integrality counts when it is not relaxed', () => {
      const small: Small = { cost: [-1], rows: [[-Infinity, [2], 5]], integer: [true] };
      expect(optimal(solve(small, { relax: true })).objective).toBeCloseTo(-2.5, 9);
      expect(optimal(solve(small)).objective).toBeCloseTo(-2, 9);
    });

    it('a cut-off below the optimum leaves nothing; at the optimum it changes nothing', () => {
      expect(solve(twoRows, { cutoff: 8.5 }).kind).toBe('infeasible');
      expect(optimal(solve(twoRows, { cutoff: 9.5 })).objective).toBeCloseTo(9, 9);
    });
  });
}
