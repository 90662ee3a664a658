import { stream } from '@waymend/core/choosing/random-problem';
import { describe, expect, it } from 'vitest';
import {
  closeKnapsack,
  exhaustive,
  firstFit,
  longKnapsack,
  measure,
  model,
  optimal,
  stopped,
} from './models.ts';
import type { Row, Stopped } from './models.ts';
import type { Suite } from './suite.ts';

/** Time limits, cancelling and progress: what a search cut short still owes. */
export function stoppingConformance({ name, create }: Pick<Suite, 'name' | 'create'>): void {
  describe(`${name}: stopping`, async () => {
    const solver = await create();
    const of = longKnapsack();

    /** A stopped answer tells the truth: its point is one, its objective is the point's, its bound is below. */
    function expectHonest(answer: Stopped): void {
      const { x, objective, bound } = answer;
      if (!x || objective === null) throw new Error('no incumbent');
      const recount = measure(of, x);
      expect(recount.broken).toBeLessThan(1e-6);
      expect(recount.objective).toBeCloseTo(objective, 4);
      expect(bound).toBeLessThanOrEqual(objective);
      // No bound can be above a point that is known to exist.
      expect(bound).toBeLessThanOrEqual(measure(of, firstFit(of)).objective);
    }

    it('the time limit ends the search with an incumbent and a bound', () => {
      const before = performance.now();
      const answer = stopped(solver.solve(of, { timeLimit: 1 }));
      // Generous, because the machine may be busy; without the limit it takes minutes.
      expect(performance.now() - before).toBeLessThan(20_000);
      expectHonest(answer);
      const relaxed = optimal(solver.solve(of, { relax: true }));
      // The relaxation is the least a search knows once its root is done, and a plan within a hundredth of it is easy.
      expect(answer.bound).toBeGreaterThanOrEqual(relaxed.objective - 1e-3);
      expect(answer.objective ?? 0).toBeLessThan(relaxed.objective * 0.97);
    });

    it('shouldStop ends the search with what there is', () => {
      let asked = 0;
      const answer = stopped(
        solver.solve(of, {
          timeLimit: 60,
          shouldStop: () => ++asked > 20,
        }),
      );
      expect(asked).toBeGreaterThan(20);
      if (answer.x) expectHonest(answer);
      else expect(answer.objective).toBeNull();
    });

    it('can be stopped at the first question, and solves as ever afterwards', () => {
      const answer = solver.solve(of, { shouldStop: () => true, timeLimit: 60 });
      expect(answer.kind).toBe('stopped');
      expect(optimal(solver.solve(model({ cost: [1], rows: [[2, [1], 5]] }))).objective).toBeCloseTo(2, 9);
      const small = closeKnapsack(4);
      expect(Math.round(optimal(solver.solve(small)).objective)).toBe(exhaustive(small));
    });

    it('a shouldStop that never asks to stop changes nothing', () => {
      const small = closeKnapsack(5);
      expect(Math.round(optimal(solver.solve(small, { shouldStop: () => false })).objective)).toBe(
        exhaustive(small),
      );
    });

    it('a start that no search would find in time is not lost', () => {
      // Six equations that a plan is known to meet, because their right sides are made from it. No search meets them in half
      // a second, so the point must be the start or better.
      const next = stream(5);
      const known = Float64Array.from({ length: 50 }, () => (next() < 0.5 ? 1 : 0));
      const rows = Array.from({ length: 6 }, (): Row => {
        const coefficients = Array.from(known, () => Math.floor(100 * next()));
        const side = coefficients.reduce((sum, one, j) => sum + one * (known[j] ?? 0), 0);
        return [side, coefficients, side];
      });
      const equations = model({
        cost: Array.from(known, () => 1 + Math.floor(100 * next())),
        rows,
        upper: Array.from(known, () => 1),
        integer: Array.from(known, () => true),
      });
      const answer = stopped(solver.solve(equations, { start: known, timeLimit: 0.5 }));
      if (!answer.x) throw new Error('the start is lost');
      const recount = measure(equations, answer.x);
      expect(recount.broken).toBeLessThan(1e-6);
      expect(recount.objective).toBeLessThanOrEqual(measure(equations, known).objective + 1e-6);
      expect(stopped(solver.solve(equations, { timeLimit: 0.5 })).x).toBeNull();
    });

    it('progress tells of plans and bounds that close in on each other', () => {
      const told: { readonly incumbent: number | null; readonly bound: number }[] = [];
      const answer = stopped(solver.solve(of, { timeLimit: 1, onProgress: (p) => told.push(p) }));
      expect(told.length).toBeGreaterThan(0);
      let [best, bound] = [Infinity, -Infinity];
      for (const p of told) {
        expect(p.incumbent ?? Infinity).toBeLessThanOrEqual(best + 1e-6);
        expect(p.bound).toBeGreaterThanOrEqual(bound - 1e-6);
        if (p.incumbent !== null) expect(p.bound).toBeLessThanOrEqual(p.incumbent + 1e-6);
        best = Math.min(best, p.incumbent ?? Infinity);
        bound = Math.max(bound, p.bound);
      }
      expect(best).toBeLessThan(Infinity);
      expect(answer.objective ?? 0).toBeLessThanOrEqual(best + 1e-6);
    });
  });
}
