import { plan } from '@waymend/core/choosing/plan';
import { describe, expect, it } from 'vitest';
import { createHighsSolver } from '../src/highs-solver.ts';
import { copiesAsEvents, proven, stockOf, stockProblem } from './as-problem.ts';
import type { PartKind } from './as-problem.ts';
import nineParts from './data/nine-parts.json';
import small from './data/small_examples.json';

const solver = await createHighsSolver();

function best(kinds: readonly PartKind[], capacities: readonly number[], scale: number, least = 0) {
  const problem = stockProblem(kinds, capacities, scale, least);
  const outcome = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
  const stock = stockOf(problem, outcome.choice.carried, kinds.length);
  const use = capacities.map((_, row) =>
    kinds.reduce((sum, { takes }, kind) => sum + (takes[row] ?? 0) * (stock[kind] ?? 0), 0),
  );
  // The score is whole units; the loss itself follows from the stock.
  return { stock, use, loss: kinds.reduce((sum, { loss }, kind) => sum + loss(stock[kind] ?? 0), 0) };
}

describe('spares of three components within price and weight', () => {
  // A public set of worked questions on system reliability; a second copy asserts 0.6075. ln R in 1e-7 neper.
  const { R, cost, weight, cost_limit, weight_limit, optimum, value, second } = small.three_component_spares;
  const kinds = R.map(
    (of, kind): PartKind => ({
      copies: of.length - 1,
      takes: [cost[kind] ?? 0, weight[kind] ?? 0],
      loss: (stock) => -Math.log(of[stock] ?? 0),
    }),
  );

  it('[M6] R = 0.6075 with 4, 1 and 1, at 150 and 18', () => {
    const found = best(kinds, [cost_limit, weight_limit], 1e7);
    expect(found.stock).toEqual(optimum);
    expect(Math.exp(-found.loss)).toBeCloseTo(value, 14);
    expect(value).toBe(0.6075);
    expect(found.use).toEqual([150, 18]);
  });

  it('[M6] with one less to spend, the runner-up: 0.5985', () => {
    const found = best(kinds, [cost_limit - 1, weight_limit], 1e7);
    expect(Math.exp(-found.loss)).toBeCloseTo(second, 14);
  });
});

describe('redundancy in four stages within cost and weight', () => {
  // A reliability-literature classic (four stages, cost 56, weight 120), data recalled; optimum by exhaustive search.
  // Costs in tenths; ln R in 1e-8 neper, because R is that close to 1.
  const { cost, weight, reliability, cost_limit, weight_limit, optimum, R } = small.four_stage_redundancy;
  const kinds = reliability.map(
    (r, kind): PartKind => ({
      copies: 10,
      takes: [Math.round((cost[kind] ?? 0) * 10), weight[kind] ?? 0],
      loss: (copies) => -Math.log1p(-((1 - r) ** copies)),
    }),
  );

  it('[M6] R = 0.9974704697706733 with 5, 6, 5 and 4, at 54.8 and 117', () => {
    const found = best(kinds, [cost_limit * 10, weight_limit], 1e8, 1);
    expect(found.stock).toEqual(optimum);
    expect(Math.abs(Math.exp(-found.loss) - R)).toBeLessThan(1e-15);
    expect(R).toBe(0.9974704697706733);
    expect(found.use).toEqual([548, 117]);
  });
});

describe('nine kinds of spare within a budget, least expected shortage', () => {
  // KTH course SF2863, home assignment 2 (report of December 2024): costs and results printed, means recovered from them.
  // Expected shortage in 1e-7 of a part.
  const kinds = nineParts.means.map(
    (mean, kind): PartKind => ({
      // The published plans take three at most: with fewer choices the same value is still the best.
      copies: 4,
      takes: [nineParts.cost[kind] ?? 0],
      loss: (stock) => expectedShortage(stock, mean),
    }),
  );

  it('[M5] with nothing aboard the shortage is the demand: 7.712', () => {
    const none = kinds.reduce((sum, { loss }) => sum + loss(0), 0);
    expect(none).toBeCloseTo(nineParts.unstocked, 12);
  });

  it.each(nineParts.optima)(
    '[M6] the dynamic programme of the report at $budget: $shortage',
    ({ budget, stock, cost, shortage }) => {
      const found = best(kinds, [budget], 1e7);
      expect(found.stock).toEqual(stock);
      expect(found.use).toEqual([cost]);
      // 15 digits are printed.
      expect(Math.abs(found.loss - shortage)).toBeLessThan(2e-14);
    },
  );

  it('[M6] every point of the marginal analysis is the best at its own cost', () => {
    // Marginal analysis is optimal at its own breakpoints (Operations Research 14, 1966, 210-223). 15 points printed, to four
    // digits. Here every copy is an event of its own: the gains fall, so the first copies are taken first.
    expect(nineParts.greedy).toHaveLength(15);
    for (const { s, ebo, cost } of nineParts.greedy) {
      const problem = copiesAsEvents(kinds, cost, 1e7);
      const { choice } = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
      expect(stockOf(problem, choice.carried, kinds.length)).toEqual(s);
      const shortage = kinds.reduce((sum, { loss }, kind) => sum + loss(s[kind] ?? 0), 0);
      expect(shortage).toBeCloseTo(ebo, 12);
    }
  });

  it('[M6] two of everything costs 538 and is hardly better than the best for 463', () => {
    const two = kinds.reduce((sum, { loss }) => sum + loss(2), 0);
    expect(nineParts.cost.reduce((sum, one) => sum + 2 * one, 0)).toBe(538);
    // Printed as about 1.40.
    expect(two).toBeCloseTo(1.4, 2);
    const problem = copiesAsEvents(kinds, 538, 1e7);
    const { loss } = proven(problem, plan(problem, { kind: 'best-chance' }, solver));
    expect(loss / 1e7).toBeLessThan(two - 0.2);
  });
});

/** E(D - s)+ for Poisson D: mean less the sum of P(D > k) over k < s. */
function expectedShortage(stock: number, mean: number): number {
  let term = Math.exp(-mean);
  let within = 0;
  let shortage = mean;
  for (let k = 0; k < stock; k++) {
    within += term;
    shortage -= 1 - within;
    term *= mean / (k + 1);
  }
  return shortage;
}
