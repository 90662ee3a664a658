import { describe, expect, it } from 'vitest';
import { certifiedBound, fixByReducedCost, wholeAbove } from '../../src/choosing/bound.ts';
import { LinearBuilder } from '../../src/choosing/linear-builder.ts';
import { stream } from '../../src/choosing/random-problem.ts';
import { restrict } from '../../src/choosing/restrict.ts';
import type { LinearModel } from '../../src/choosing/solver-port.ts';

const COLUMNS = 8;

/** Random binary models with rows of every kind: <=, >=, between, free. */
function randomModel(number: number): { model: LinearModel; next: () => number } {
  const next = stream(number);
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  const builder = new LinearBuilder();
  for (let j = 0; j < COLUMNS; j++) builder.column(0, 1, true);
  for (let row = 0; row < 5; row++) {
    const terms = Array.from({ length: COLUMNS }, (_, j) => [j, next() < 0.5 ? whole(-4, 6) : 0] as const);
    const lower = next() < 0.4 ? whole(-3, 1) : -Infinity;
    const upper = next() < 0.8 ? whole(2, 8) : Infinity;
    builder.row(
      lower,
      upper,
      terms.filter(([, value]) => value !== 0),
    );
  }
  return { model: builder.build(Float64Array.from({ length: COLUMNS }, () => whole(-9, 9))), next };
}

function points(model: LinearModel, columns = COLUMNS): { x: number[]; cost: number }[] {
  return Array.from({ length: 1 << columns }, (_, mask) =>
    Array.from({ length: columns }, (_, j) => (mask >> j) & 1),
  )
    .filter((x) =>
      Array.from(model.rowLower).every((lower, row) => {
        let sum = 0;
        for (let at = model.start[row] ?? 0; at < (model.start[row + 1] ?? 0); at++) {
          sum += (model.value[at] ?? 0) * (x[model.column[at] ?? 0] ?? 0);
        }
        return sum >= lower && sum <= (model.rowUpper[row] ?? 0);
      }),
    )
    .map((x) => ({ x, cost: x.reduce((sum, value, j) => sum + value * (model.cost[j] ?? 0), 0) }));
}

describe('certifiedBound', () => {
  it('[M8] no multipliers whatever give a bound above the best point', () => {
    for (let number = 1; number <= 400; number++) {
      const { model, next } = randomModel(number);
      const dual = Float64Array.from({ length: 5 }, () => (next() - 0.5) * 8);
      const { bound } = certifiedBound(model, dual);
      for (const { cost } of points(model)) expect(cost).toBeGreaterThanOrEqual(bound - 1e-9);
    }
  });

  it('[M8] fixing by reduced cost keeps every point of value up to the cut-off', () => {
    let fixed = 0;
    for (let number = 1; number <= 400; number++) {
      const { model, next } = randomModel(number);
      const dual = Float64Array.from({ length: 5 }, () => (next() - 0.7) * 3);
      const all = points(model);
      const best = Math.min(...all.map(({ cost }) => cost));
      if (!Number.isFinite(best)) continue;
      const cutoff = best + Math.floor(next() * 3);
      const lower = model.lower.slice();
      const upper = model.upper.slice();
      fixed += fixByReducedCost(certifiedBound(model, dual), cutoff, lower, upper);
      for (const { x, cost } of all) {
        if (cost <= cutoff)
          expect(x.every((value, j) => value >= (lower[j] ?? 0) && value <= (upper[j] ?? 0))).toBe(true);
      }
    }
    expect(fixed).toBeGreaterThan(100);
  });

  it('a bound counts as the next whole number, but for a hair', () => {
    expect([wholeAbove(3.2), wholeAbove(3.0004), wholeAbove(3), wholeAbove(-3.2)]).toEqual([4, 3, 3, -3]);
  });
});

describe('restrict', () => {
  it('[M8] with columns fixed, the smaller model has the same best value and expands to a point that reaches it', () => {
    for (let number = 1; number <= 300; number++) {
      const { model, next } = randomModel(number);
      const lower = model.lower.slice();
      const upper = model.upper.slice();
      for (let j = 0; j < COLUMNS; j++) {
        if (next() >= 0.45) continue;
        lower[j] = upper[j] = next() < 0.5 ? 0 : 1;
      }
      const inside = points(model).filter(({ x }) =>
        x.every((value, j) => value >= (lower[j] ?? 0) && value <= (upper[j] ?? 0)),
      );
      const small = restrict(model, lower, upper, model.cost);
      if (small.impossible) {
        expect(inside).toEqual([]);
        continue;
      }
      const left = small.model.cost.length;
      const expanded = points(small.model, left).map(({ x, cost }) => ({
        x: [...small.expand(x)],
        cost: cost + small.constant,
      }));
      const byPoint = (list: { x: number[] }[]) => list.map((one) => JSON.stringify(one)).sort();
      expect(byPoint(expanded)).toEqual(byPoint(inside));
    }
    expect.hasAssertions();
  });
});
