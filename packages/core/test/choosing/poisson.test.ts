import poisson from '@stdlib/stats-base-dists-poisson';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kappa, shortfallNepers } from '../../src/repairing/kappa.ts';
import { exactPoisson } from './exact-poisson.ts';
import values from './poisson-values.json';

const MEANS = [
  1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.03, 0.1, 0.3, 0.5, 0.9, 1, 1.7, 2.5, 4, 6, 8.5, 12, 15, 18, 20, 20.5, 21,
  21.5, 25, 31, 38, 44, 50,
];
const STOCKS = Array.from({ length: 21 }, (_, s) => s);
const grid = MEANS.flatMap((mean) => STOCKS.map((s) => ({ mean, s })));

/** Largest relative difference over the grid, with where it is. */
function worst(of: (mean: number, s: number) => readonly [number, number]): number {
  return grid.reduce((most, { mean, s }) => {
    const [value, other] = of(mean, s);
    const relative = Math.abs(value / other - 1);
    // A NaN must not pass for small.
    return relative <= most ? most : relative;
  }, 0);
}

const within = (s: number, mean: number): number => Math.exp(-shortfallNepers(s, mean));
const beyond = (s: number, mean: number): number => -Math.expm1(-shortfallNepers(s, mean));

/** E(D - s)+ as the sum of P(D > k) over k >= s. */
function shortage(s: number, mean: number): number {
  let sum = 0;
  for (let k = s + Math.ceil(mean + 40 * Math.sqrt(mean) + 40); k >= s; k--) sum += beyond(k, mean);
  return sum;
}

describe('Poisson distribution behind kappa, mean 1e-6 to 50, stock 0 to 20', () => {
  it('[M5] agrees with @stdlib/stats-base-dists-poisson to 1e-12: distribution function', () => {
    expect(worst((mean, s) => [within(s, mean), poisson.cdf(s, mean)])).toBeLessThan(1e-12);
  });

  it('[M5] agrees with its logarithm where that keeps its digits', () => {
    // -ln F is -log of the library's cdf; near F = 1 it is right to a few last places of 1.
    for (const { mean, s } of grid) {
      const theirs = -Math.log(poisson.cdf(s, mean));
      expect(Math.abs(shortfallNepers(s, mean) - theirs)).toBeLessThan(1e-12 * theirs + 4 * Number.EPSILON);
    }
  });

  it('[M5] agrees with its upper tail, summed from its mass function, to 1e-12 down to 1e-146', () => {
    const tail = (mean: number, s: number): number => {
      let sum = 0;
      for (let k = s + 200; k > s; k--) sum += poisson.pmf(k, mean);
      return sum;
    };
    expect(worst((mean, s) => [beyond(s, mean), tail(mean, s)])).toBeLessThan(1e-12);
    expect(beyond(20, 1e-6)).toBeLessThan(1e-145);
    expect(beyond(20, 1e-6)).toBeGreaterThan(1e-147);
  });

  it('[M5] agrees with sums in 700 binary places to 1e-14', () => {
    for (const mean of MEANS) {
      const exact = exactPoisson(mean);
      for (const s of STOCKS) {
        const label = `mean ${mean}, ${s} aboard`;
        expect(Math.abs(shortfallNepers(s, mean) / exact.shortfall(s) - 1), label).toBeLessThan(1e-14);
      }
    }
  });

  it('[M5] and for any mean in between', () => {
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(1e-6), max: Math.log(50), noNaN: true }),
        fc.integer({ min: 0, max: 20 }),
        (logarithm, s) => {
          const mean = Math.exp(logarithm);
          const exact = exactPoisson(mean).shortfall(s);
          expect(Math.abs(shortfallNepers(s, mean) / exact - 1)).toBeLessThan(1e-14);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('[M5] nothing wanted is nothing lost, and with nothing aboard all that is wanted is lost', () => {
    for (const s of STOCKS) expect(shortfallNepers(s, 0)).toBe(0);
    for (const mean of MEANS) expect(shortfallNepers(0, mean)).toBeCloseTo(mean, 12);
  });
});

describe('a Poisson table, means 0.01 to 5, stock 0 to 6', () => {
  // Computed apart from this code, 15 digits.
  it('[M5] distribution function and expected shortage', () => {
    expect(values.table).toHaveLength(56);
    for (const { mean, stock, within: printed, shortage: short } of values.table) {
      const label = `mean ${mean}, ${stock} aboard`;
      expect(Math.abs(within(stock, mean) / printed - 1), label).toBeLessThan(1e-14);
      expect(Math.abs(shortage(stock, mean) / short - 1), label).toBeLessThan(1e-12);
    }
  });

  it('[M5] one more aboard saves the chance that more are wanted: EBO(s) - EBO(s + 1) = P(D > s)', () => {
    const steps = values.table.flatMap((row, at) => {
      const next = values.table[at + 1];
      return next && next.mean === row.mean ? [{ row, next }] : [];
    });
    expect(steps).toHaveLength(48);
    for (const { row, next } of steps) {
      const chance = beyond(row.stock, row.mean);
      const slack = 1e-12 * chance + 8 * Number.EPSILON * row.shortage;
      expect(Math.abs(row.shortage - next.shortage - chance)).toBeLessThan(slack);
    }
  });
});

describe('published Poisson losses and newsvendor costs', () => {
  it.each(values.losses)('[M5] E(D - $stock)+ for mean $mean is $loss', ({ stock, mean, loss }) => {
    // Loss function tests of stockpyl (MIT).
    expect(Math.abs(shortage(stock, mean) / loss - 1)).toBeLessThan(1e-12);
    expect(Math.abs(exactPoisson(mean).shortage(stock) / loss - 1)).toBeLessThan(1e-12);
  });

  /** Expected cost of a stock: holding what is over, paying for what is short. */
  const cost = (stock: number, mean: number, holding: number, short: number): number =>
    holding * (stock - mean) + (holding + short) * shortage(stock, mean);

  it.each(values.newsvendor)(
    '[M5] holding $holding, shortage $shortage, mean $mean: $stock aboard cost $cost',
    ({ holding, shortage: short, mean, stock, cost: published }) => {
      // Snyder and Shen, Fundamentals of Supply Chain Theory: Example 4.7, Problems 4.8(a) and 4.19; values of stockpyl's tests.
      expect(Math.abs(cost(stock, mean, holding, short) / published - 1)).toBeLessThan(1e-12);
    },
  );

  it.each([
    // The same source: best stock of Example 4.7, Problem 4.8(a), Problem 4.19.
    [1, 4, 6, 8],
    [200, 270, 18, 19],
    [0.08, 1.25, 90, 105],
  ])('[M5] holding %d, shortage %d, mean %d: best with %d', (holding, short, mean, best) => {
    const costs = Array.from({ length: 150 }, (_, stock) => cost(stock, mean, holding, short));
    expect(costs.indexOf(Math.min(...costs))).toBe(best);
    // The critical ratio says the same: the least stock with F >= p / (p + h).
    const enough = costs.findIndex((_, stock) => within(stock, mean) >= short / (short + holding));
    expect(enough).toBe(best);
  });
});

describe('shape', () => {
  const mean = fc.double({ min: 1e-3, max: 50, noNaN: true });

  it('[M5] F is log-concave in the stock: every further copy gains less', () => {
    fc.assert(
      fc.property(mean, fc.integer({ min: 1, max: 20 }), (m, s) => {
        const before = shortfallNepers(s - 1, m) - shortfallNepers(s, m);
        const after = shortfallNepers(s, m) - shortfallNepers(s + 1, m);
        expect(before).toBeGreaterThan(after);
        expect(after).toBeGreaterThan(0);
      }),
    );
  });

  it('[M5] the first copy gains ln(1 + mean), from nothing aboard', () => {
    fc.assert(
      fc.property(mean, (m) => {
        expect((m - shortfallNepers(1, m)) / Math.log1p(m)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('[M5] kappa times any smaller demand is never less than what that demand loses: the chord is a bound', () => {
    fc.assert(
      fc.property(
        mean,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 0, max: 20 }),
        (all, share, s) => {
          const part = all * share;
          const stated = kappa(s, all) * part;
          expect(stated).toBeGreaterThanOrEqual(shortfallNepers(s, part) * (1 - 1e-12));
        },
      ),
      { numRuns: 500 },
    );
  });

  it('[M5] the chord touches at the whole demand and at none, and lies above in between', () => {
    for (const { mean: all, s } of grid) {
      if (s === 0) continue;
      expect(Math.abs((kappa(s, all) * all) / shortfallNepers(s, all) - 1)).toBeLessThan(1e-14);
      expect(kappa(s, all) * (all / 2)).toBeGreaterThan(shortfallNepers(s, all / 2));
    }
  });

  it('[M5] kappa rises with demand and falls with stock, between 0 and 1', () => {
    fc.assert(
      fc.property(mean, mean, fc.integer({ min: 1, max: 20 }), (a, b, s) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(kappa(s, low)).toBeLessThanOrEqual(kappa(s, high) * (1 + 1e-13));
        expect(kappa(s + 1, high)).toBeLessThan(kappa(s, high));
        expect(kappa(s, high)).toBeLessThan(1);
        expect(kappa(s, low)).toBeGreaterThan(0);
      }),
    );
    expect(kappa(0, 0.4)).toBe(1);
  });
});
