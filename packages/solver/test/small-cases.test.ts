import { LinearBuilder } from '@waymend/core/choosing/linear-builder';
import { plan } from '@waymend/core/choosing/plan';
import type { Problem } from '@waymend/core/choosing/problem';
import { describe, expect, it } from 'vitest';
import { createHighsSolver } from '../src/highs-solver.ts';
import { NOTHING, anyOf, coverProblem, knapsackProblem, owned, proven, worth } from './as-problem.ts';
import small from './data/small_examples.json';
import { readKnapsack } from './read-data.ts';

const solver = await createHighsSolver();
const total = ({ events }: Problem): number => events.reduce((sum, { loss }) => sum + loss, 0);

describe('knapsack', () => {
  it('[M6] four investments, 14 to spend: 42, the first left out', () => {
    // Winston, Operations Research (Stockco); numbers recalled, optimum by exhaustive search.
    const { profit, weight, cap, optimum, x } = small.four_investments;
    const problem = knapsackProblem({
      profits: [profit],
      resources: [{ weights: weight, capacity: cap }],
    });
    const { choice, loss } = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
    expect(total(problem) - loss).toBe(optimum);
    expect(optimum).toBe(42);
    expect(problem.pieces.map((_, p) => (choice.carried.includes(p) ? 1 : 0))).toEqual(x);
  });

  it('[M6] kplib 00Uncorrelated, 100 items: 46537, as dynamic programming says', () => {
    // likr/kplib (CC BY 4.0). The value is computed, not published; computed again here.
    const data = readKnapsack('kplib-uncorrelated-100.kp');
    const problem = knapsackProblem(data);
    const { loss } = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
    expect(total(problem) - loss).toBe(46537);
    const [profit = []] = data.profits;
    const [{ weights, capacity } = { weights: [], capacity: 0 }] = data.resources;
    const best = new Float64Array(capacity + 1);
    profit.forEach((of, j) => {
      const weight = weights[j] ?? 0;
      for (let room = capacity; room >= weight; room--) {
        best[room] = Math.max(best[room] ?? 0, (best[room - weight] ?? 0) + of);
      }
    });
    expect(best[capacity]).toBe(46537);
  });
});

describe('six towns, a station within 15 minutes of each', () => {
  // Winston, Operations Research (Kilroy County): cover sets from its travel times.
  const { cover, optimum, unique } = small.six_towns;
  // The cover is symmetric: town r is served by the stations whose list names it.
  const rows = cover.map((of) => of.map((town) => town - 1));
  const problem = coverProblem({ costs: [cover.map(() => 1)], rows });

  it('[M6] two stations do, in towns 2 and 4', () => {
    const { choice, grams } = proven(problem, plan(problem, { kind: 'must-do' }, solver));
    expect(grams).toBe(optimum);
    expect(choice.carried.map((station) => station + 1)).toEqual(unique);
  });

  it('[M6] no other two do: without either it takes three', () => {
    for (const town of unique) {
      const pieces = problem.pieces.map((piece, p) =>
        p === town - 1 ? { ...piece, pin: 'never' as const } : piece,
      );
      const without = { ...problem, pieces };
      expect(proven(without, plan(without, { kind: 'must-do' }, solver)).grams).toBe(3);
    }
  });
});

describe('project selection: three projects, three machines', () => {
  // Max-flow min-cut page of Wikipedia, numbers recalled; optimum by exhaustive search.
  const { revenue, tool_cost: price, needs, max_profit: profit, min_cut: cut } = small.project_selection;
  const projects = Object.entries(needs);
  const machines = Object.entries(price);
  const earned = Object.fromEntries(Object.entries(revenue));
  const machine = (id: string): number => machines.findIndex(([name]) => name === id);

  it('[M6] loss with machines as loss when bought is the minimum cut, 250', () => {
    // A machine left unbought avoids its price: revenue forgone + prices paid is what the cut counts.
    const buy = machines.length;
    const problem: Problem = {
      ...NOTHING,
      pieces: [
        ...machines.map(([id]) => owned(`buy ${id}`, 0)),
        ...machines.map(([id]) => owned(`save ${id}`, 0)),
      ],
      needs: [...machines.map((_, q) => anyOf([q])), ...machines.map((_, q) => anyOf([buy + q]))],
      events: [
        ...projects.map(([id, of]) => ({
          id,
          loss: earned[id] ?? 0,
          options: [{ needs: of.map(machine), gain: earned[id] ?? 0, label: id }],
        })),
        ...machines.map(([id, cost], q) => worth(`save ${id}`, cost, buy + q)),
      ],
      limits: machines.map(([id], q) => ({
        id: `${id}: bought or saved`,
        limit: 1,
        carried: [
          { piece: q, weight: 1 },
          { piece: buy + q, weight: 1 },
        ],
      })),
    };
    const { choice, loss } = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
    expect(loss).toBe(cut);
    const bought = choice.carried.filter((p) => p < buy).map((q) => machines[q]?.[0]);
    expect(bought).toEqual(small.project_selection.tools);
    const revenues = Object.values(revenue).reduce((sum, one) => sum + one, 0);
    expect(revenues - loss).toBe(profit);
    expect(profit).toBe(200);
  });

  it('[M6] as a closure the relaxation is whole: 200 without integrality, by the solver port', () => {
    const builder = new LinearBuilder();
    const y = projects.map(() => builder.column(0, 1, true));
    const x = machines.map(() => builder.column(0, 1, true));
    projects.forEach(([, of], p) => {
      for (const id of of)
        builder.row(-Infinity, 0, [
          [y[p] ?? 0, 1],
          [x[machine(id)] ?? 0, -1],
        ]);
    });
    const cost = Float64Array.from([
      ...projects.map(([id]) => -(earned[id] ?? 0)),
      ...machines.map(([, of]) => of),
    ]);
    for (const relax of [true, false]) {
      const answer = solver.solve(builder.build(cost), { relax });
      if (answer.kind !== 'optimal') throw new Error(answer.kind);
      expect(answer.objective).toBeCloseTo(-profit, 9);
      const done = projects.filter((_, p) => (answer.x[y[p] ?? 0] ?? 0) > 0.5).map(([id]) => id);
      expect(done).toEqual(small.project_selection.chosen);
      for (const value of answer.x) expect(Math.abs(value - Math.round(value))).toBeLessThan(1e-9);
    }
  });
});
