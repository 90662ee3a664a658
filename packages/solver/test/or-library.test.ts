import { LinearBuilder } from '@waymend/core/choosing/linear-builder';
import { plan } from '@waymend/core/choosing/plan';
import { describe, expect, it } from 'vitest';
import { createHighsSolver } from '../src/highs-solver.ts';
import { coverProblem, knapsackProblem, proven } from './as-problem.ts';
import { readCover, readMultiKnapsacks } from './read-data.ts';

// OR-Library (JORS 41(11), 1990, 1069-1072): file names and best known values; licences in data/README.md.
const solver = await createHighsSolver();

describe('OR-Library weighted set cover, through plan() with the aim must-do', () => {
  it.each([
    ['scp41.txt', 200, 1000, 429],
    ['scp42.txt', 200, 1000, 512],
    ['scp43.txt', 200, 1000, 516],
    ['scp51.txt', 200, 2000, 253],
  ])('[M6] %s (%d rows, %d columns) costs %d', (name, rows, columns, published) => {
    const data = readCover(name, 1);
    expect(data.rows).toHaveLength(rows);
    expect(data.costs[0]).toHaveLength(columns);
    const problem = coverProblem(data);
    const { choice, grams } = proven(problem, plan(problem, { kind: 'must-do' }, solver));
    expect(grams).toBe(published);
    // From the file alone: every row covered, at this cost.
    const chosen = new Set(choice.carried);
    expect(data.rows.every((of) => of.some((column) => chosen.has(column)))).toBe(true);
    expect([...chosen].reduce((sum, column) => sum + (data.costs[0]?.[column] ?? 0), 0)).toBe(published);
  });

  it('[M8] without reductions the answer is the same', () => {
    const problem = coverProblem(readCover('scp51.txt', 1));
    const outcome = plan(problem, { kind: 'must-do' }, solver, { reduce: false });
    expect(proven(problem, outcome).grams).toBe(253);
  });

  it('[M8] one below the published cost there is no cover: the greatest mass would have to give by 1', () => {
    const problem = coverProblem(readCover('scp41.txt', 1));
    const mass = {
      id: 'mass',
      limit: 428,
      carried: problem.pieces.map(({ grams }, piece) => ({ piece, weight: grams })),
    };
    const outcome = plan({ ...problem, limits: [mass] }, { kind: 'must-do' }, solver);
    expect(outcome).toEqual({ kind: 'no-plan', clashes: [{ limit: 'mass', shortBy: 1 }] });
  });
});

describe('OR-Library set cover relaxed, through the solver port', () => {
  // Computed with another build of the solver, not published: for scp41 to scp43 the relaxation is whole.
  it.each([
    ['scp41.txt', 429],
    ['scp42.txt', 512],
    ['scp43.txt', 516],
    ['scp51.txt', 251.225],
  ])('%s has the relaxation %d', (name, value) => {
    const { costs, rows } = readCover(name, 1);
    const cost = Float64Array.from(costs[0] ?? []);
    const builder = new LinearBuilder();
    for (let column = 0; column < cost.length; column++) builder.column(0, 1, true);
    for (const row of rows)
      builder.row(
        1,
        Infinity,
        row.map((column) => [column, 1] as const),
      );
    const answer = solver.solve(builder.build(cost), { relax: true });
    if (answer.kind !== 'optimal') throw new Error(answer.kind);
    expect(answer.objective).toBeCloseTo(value, 9);
  });
});

describe('OR-Library multi-dimensional knapsack mknap1, through plan() with the aim best-chance', () => {
  const problems = readMultiKnapsacks('mknap1.txt');

  // The values printed in the file (after Petersen, Operations Research 15, 1967). The second has tenths.
  it.each([
    [1, 6, 10, 3800],
    [2, 10, 10, 8706.1],
    [3, 15, 10, 4015],
    [4, 20, 10, 6120],
    [5, 28, 10, 12400],
    [6, 39, 5, 10618],
    [7, 50, 5, 16537],
  ])('[M6] problem %d (%d items, %d resources) is worth %d', (number, items, rows, published) => {
    const data = problems[number - 1];
    if (!data) throw new Error('missing');
    expect(data.optimum).toBe(published);
    expect(data.profits[0]).toHaveLength(items);
    expect(data.resources).toHaveLength(rows);
    const scale = 10;
    const problem = knapsackProblem(data, scale);
    const total = problem.events.reduce((sum, { loss }) => sum + loss, 0);
    const { choice, loss } = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
    expect(total - loss).toBe(Math.round(published * scale));
    const sum = (of: readonly number[]) => choice.carried.reduce((all, j) => all + (of[j] ?? 0), 0);
    expect(sum(data.profits[0] ?? [])).toBeCloseTo(published, 9);
    for (const { weights, capacity } of data.resources) expect(sum(weights)).toBeLessThanOrEqual(capacity);
  });
});
