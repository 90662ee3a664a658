import { relaxedSession } from '@waymend/core/choosing/relaxed-session';
import { describe, expect, it } from 'vitest';
import { closeKnapsack, longKnapsack, optimal, stopped } from './models.ts';
import type { Suite } from './suite.ts';

/** The same again: equal vectors, answers that stay, memory that does not grow. */
export function repeatConformance({ name, create, memoryBytes }: Suite): void {
  describe(`${name}: again and again`, () => {
    it('the same input gives the same vector, in one solver and in another', async () => {
      const [one, other] = [await create(), await create()];
      for (const of of [longKnapsack(30, 3), closeKnapsack(11)]) {
        for (const relax of [false, true]) {
          const first = optimal(one.solve(of, { relax }));
          one.solve(closeKnapsack(12));
          for (const solver of [one, other]) {
            const again = optimal(solver.solve(of, { relax }));
            expect(again.x).toEqual(first.x);
            expect(again.objective).toBe(first.objective);
            expect(again.rowDual).toEqual(first.rowDual);
          }
        }
      }
    });

    it('an answer stays what it was when the solver goes on', async () => {
      const solver = await create();
      const first = optimal(solver.solve(longKnapsack(30, 3), { relax: true }));
      const kept = structuredClone(first);
      for (let number = 1; number <= 20; number++) solver.solve(closeKnapsack(number));
      expect(first).toEqual(kept);
    });

    it('300 solves, whole, relaxed, stopped and in sessions, take no more than 40 MB for good', async () => {
      const solver = await create();
      // 24,000 entries, half a megabyte in any solver, and quickly solved because nothing is worth taking.
      const taking = longKnapsack(300, 80);
      const bulky = { ...taking, cost: taking.cost.map((cost) => -cost) };
      const round = (number: number): void => {
        if (number % 3 === 0) {
          const session = relaxedSession(solver, bulky);
          expect(optimal(session.solve()).objective).toBe(0);
          session.setCost(bulky.cost.map((cost) => 2 * cost));
          expect(optimal(session.solve()).objective).toBe(0);
          session.close();
        } else if (number % 3 === 1) {
          expect(optimal(solver.solve(bulky, { relax: number % 2 === 0 })).objective).toBe(0);
        } else if (number % 2 === 0) {
          stopped(solver.solve(longKnapsack(60, 5), { shouldStop: () => true }));
        } else optimal(solver.solve(closeKnapsack(1 + (number % 30))));
      };
      for (let number = 0; number < 10; number++) round(number);
      const before = memoryBytes(solver);
      expect(before).toBeGreaterThan(0);
      for (let number = 0; number < 300; number++) round(number);
      expect(memoryBytes(solver) - before).toBeLessThan(40e6);
    });
  });
}
