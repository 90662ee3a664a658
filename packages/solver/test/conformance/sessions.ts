import { stream } from '@waymend/core/choosing/random-problem';
import { relaxedSession } from '@waymend/core/choosing/relaxed-session';
import { describe, expect, it } from 'vitest';
import { expectVector, longKnapsack, measure, model, optimal } from './models.ts';
import type { Optimal } from './models.ts';
import type { Suite } from './suite.ts';

/** Sessions: a solver's own, and those core makes out of whole solves. */
export function sessionConformance({ name, create }: Pick<Suite, 'name' | 'create'>): void {
  describe(`${name}: sessions of one relaxed model`, async () => {
    const solver = await create();
    // min x + 2y with x + y >= 3, 0 <= x <= 2, 0 <= y <= 5: x = 2, y = 1, objective 4.
    const base = model({ cost: [1, 2], rows: [[3, [1, 1], Infinity]], upper: [2, 5] });

    it('follows changed bounds, rows and costs, and back', () => {
      const session = relaxedSession(solver, base);
      const now = (): Optimal => optimal(session.solve());
      expectVector(now().x, [2, 1]);
      expectVector(now().rowDual, [2]);
      expectVector(now().reducedCost, [-1, 0]);
      session.setColumnBounds(Float64Array.of(0, 0), Float64Array.of(0.5, 5));
      expectVector(now().x, [0.5, 2.5]);
      session.setRowBounds(0, 5, Infinity);
      expectVector(now().x, [0.5, 4.5]);
      session.setCost(Float64Array.of(3, 1));
      expectVector(now().x, [0, 5]);
      session.setRowBounds(0, 6, Infinity);
      expect(session.solve().kind).toBe('infeasible');
      session.setRowBounds(0, 3, Infinity);
      session.setColumnBounds(Float64Array.of(0, 0), Float64Array.of(2, 5));
      session.setCost(Float64Array.of(1, 2));
      expectVector(now().x, [2, 1]);
      session.close();
    });

    it('hears of bounds that the caller has narrowed in place', () => {
      const upper = base.upper.slice();
      const session = relaxedSession(solver, { ...base, upper });
      expectVector(optimal(session.solve()).x, [2, 1]);
      upper[0] = 0.5;
      session.setColumnBounds(base.lower, upper);
      expectVector(optimal(session.solve()).x, [0.5, 2.5]);
      session.close();
    });

    it('leaves the model it was given as it was', () => {
      const session = relaxedSession(solver, base);
      session.setRowBounds(0, 1, 1);
      session.setCost(Float64Array.of(9, 9));
      session.setColumnBounds(Float64Array.of(0, 0), Float64Array.of(1, 1));
      optimal(session.solve());
      session.close();
      expectVector(base.cost, [1, 2]);
      expectVector(base.upper, [2, 5]);
      expect(base.rowLower[0]).toBe(3);
    });

    it('agrees with solving anew over 60 changes, two sessions side by side', () => {
      const next = stream(7);
      const of = longKnapsack(30, 4);
      const relaxed = { ...of, integer: new Uint8Array(30) };
      const sessions = [relaxedSession(solver, of), relaxedSession(solver, of)];
      const state = sessions.map(() => ({ ...relaxed }));
      for (let change = 0; change < 60; change++) {
        const which = change % 2;
        const session = sessions[which];
        const was = state[which];
        if (!session || !was) throw new Error('missing');
        const upper = was.upper.map((u) => (next() < 0.2 ? 1 - u : u));
        const cost = was.cost.map((c) => (next() < 0.1 ? -Math.floor(1000 * next()) : c));
        const row = Math.floor(4 * next());
        const rowUpper = was.rowUpper.slice();
        rowUpper[row] = Math.floor((rowUpper[row] ?? 0) * (0.8 + 0.4 * next()));
        session.setColumnBounds(was.lower, upper);
        session.setCost(cost);
        session.setRowBounds(row, -Infinity, rowUpper[row] ?? 0);
        const changed = { ...was, upper, cost, rowUpper };
        state[which] = changed;
        const here = optimal(session.solve());
        const anew = optimal(solver.solve(changed, { relax: true }));
        expect(Math.abs(here.objective - anew.objective)).toBeLessThan(1e-6);
        expect(measure(changed, here.x).broken).toBeLessThan(1e-7);
      }
      for (const session of sessions) session.close();
    });
  });
}
