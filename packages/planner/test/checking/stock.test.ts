import { metres } from '@waymend/core/quantity/units';
import type { Scene } from '@waymend/core/repairing/scene';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../src/checking/check-plan.ts';
import { kappa, shortfallNepers } from '../../src/checking/poisson.ts';
import { does, job, piece, scene, trouble } from './hand-made.ts';

const spare = (id: string, of: string, units = 1) => piece(id, [], { stock: [{ of, units }] });

function check(world: Scene, carried = world.pieces.map((p) => p.id)) {
  const grams = carried.length * 100;
  return checkPlan(world, carried, [], [], { grams }).figures;
}

/** Poisson distribution function from its definition. */
function cdf(s: number, mean: number): number {
  let term = Math.exp(-mean);
  let sum = term;
  for (let k = 1; k <= s; k++) {
    term *= mean / k;
    sum += term;
  }
  return sum;
}

describe('Poisson', () => {
  it('[M5] -ln F agrees with the definition', () => {
    for (const mean of [0.01, 0.3, 1, 5]) {
      for (const s of [0, 1, 2, 6]) expect(shortfallNepers(s, mean)).toBeCloseTo(-Math.log(cdf(s, mean)), 12);
    }
    // F(2; 1) = 2.5 / e.
    expect(shortfallNepers(2, 1)).toBeCloseTo(1 - Math.log(2.5), 14);
  });

  it('[M5] no stock takes all of the worth, more stock takes less, none is taken where none is asked for', () => {
    expect(kappa(0, 0.2)).toBe(1);
    expect(kappa(0, 0)).toBe(1);
    expect(kappa(1, 0)).toBe(0);
    expect(kappa(1, 0.2)).toBeGreaterThan(kappa(2, 0.2));
    // For small demand half of the demand runs short of a single part.
    expect(kappa(1, 1e-6)).toBeCloseTo(5e-7, 12);
  });
});

describe('stock in the chance', () => {
  const fix = job('F', { uses: [{ of: 'belt', units: 1 }], chanceFactor: 0.9 });

  it('[M5] one user: p - (1/Lambda)(-ln F(s; Lambda p)), and the exact count says the same', () => {
    const expected = 0.4;
    const p = 0.8 * 0.9;
    const world = scene({
      jobs: [fix],
      trouble: [trouble('belt-gone', expected, ['F'])],
      pieces: [spare('b1', 'belt'), spare('b2', 'belt')],
    });
    const nepers = expected * (1 - p) - Math.log(cdf(2, expected * p));
    expect(check(world).chance).toBeCloseTo(Math.exp(-nepers), 12);
    expect(check(world).chanceExactStock).toBeCloseTo(Math.exp(-nepers), 12);
    expect(check(world, []).chance).toBeCloseTo(Math.exp(-expected), 12);
  });

  it('[M5] several users of one stock: the bound is below the exact count, which is below ample stock', () => {
    const world = scene({
      jobs: [fix, job('G', { uses: [{ of: 'belt', units: 1 }], needs: [{ kind: 'function', fn: 'pry' }] })],
      trouble: [trouble('a', 0.5, ['F']), trouble('b', 0.3, ['G'])],
      pieces: [spare('b1', 'belt'), piece('bar', [does('pry')])],
    });
    const both = check(world);
    const pA = 0.72;
    const pB = 0.8;
    const D = 0.5 * pA + 0.3 * pB;
    const exact = Math.exp(-(0.5 * (1 - pA) + 0.3 * (1 - pB))) * cdf(1, D);
    expect(both.chanceExactStock).toBeCloseTo(exact, 12);
    expect(both.chance).toBeCloseTo(exact, 12);
    // Without the bar the second trouble is not met, yet its demand still counts in the bound.
    const one = check(world, ['b1']);
    expect(one.chanceExactStock).toBeCloseTo(Math.exp(-(0.5 * (1 - pA) + 0.3)) * cdf(1, 0.5 * pA), 12);
    const k = -Math.log(cdf(1, D)) / D;
    expect(one.chance).toBeCloseTo(Math.exp(-(0.5 * (1 - pA * (1 - k)) + 0.3)), 12);
    expect(one.chance).toBeLessThan(one.chanceExactStock);
  });

  it('[M5] demand is asked by the best tools on the whole table, and only by jobs that reach help', () => {
    const short = job('H', { uses: [{ of: 'belt', units: 1 }], trusted: metres(50_000) });
    const world = (jobs: readonly string[]) =>
      scene({
        jobs: [fix, short],
        trouble: [trouble('a', 0.5, ['F']), trouble('b', 0.5, jobs)],
        pieces: [spare('b1', 'belt')],
      });
    // Help is 100 km away: the limp restores nothing and asks for nothing.
    expect(check(world(['H'])).chance).toBeCloseTo(check(world([])).chance, 14);
    expect(check(world(['F'])).trouble[0]?.chance).toBeLessThan(check(world([])).trouble[0]?.chance ?? 0);
  });

  it('[M5] a trouble with two jobs on one stock asks for it by the better of them, once', () => {
    const poor = job('P', { uses: [{ of: 'belt', units: 1 }], chanceFactor: 0.5 });
    const world = (jobs: readonly string[]) =>
      scene({ jobs: [fix, poor], trouble: [trouble('a', 0.5, jobs)], pieces: [spare('b1', 'belt')] });
    expect(check(world(['F', 'P'])).chance).toBe(check(world(['F'])).chance);
    expect(check(world(['P', 'F'])).chance).toBe(check(world(['F'])).chance);
  });

  it('[M5] tools that are neither owned nor for sale ask for nothing', () => {
    const pry = job('G', { uses: [{ of: 'belt', units: 1 }], needs: [{ kind: 'function', fn: 'pry' }] });
    const world = (change: Parameters<typeof piece>[2]) =>
      scene({
        jobs: [fix, pry],
        trouble: [trouble('a', 0.5, ['F']), trouble('b', 0.5, ['G'])],
        pieces: [spare('b1', 'belt'), piece('bar', [does('pry')], change)],
      });
    const chance = (change: Parameters<typeof piece>[2]) => check(world(change), ['b1']).chance;
    // A flat tool that could be made ready is on no table yet.
    expect(chance({ owned: false, cents: null, pin: 'never' })).toBeGreaterThan(chance({ pin: 'never' }));
    expect(chance({ owned: false })).toBe(chance({ pin: 'never' }));
    expect(chance({ owned: false, cents: null, bundles: ['box'] })).toBe(chance({ pin: 'never' }));
  });

  it('[M5] fluids count whole jobs: five litres are two jobs of two litres', () => {
    const drink = (litres: number) =>
      scene({
        jobs: [job('C', { uses: [{ of: 'coolant', units: 2 }] })],
        trouble: [trouble('leak', 0.6, ['C'])],
        pieces: [spare('can', 'coolant', litres)],
      });
    expect(check(drink(5)).chance).toBeCloseTo(check(drink(4)).chance, 14);
    expect(check(drink(5)).jobs[0]?.times).toBe(2);
    expect(check(drink(5)).chance).toBeGreaterThan(check(drink(3)).chance);
    expect(check(drink(1)).chance).toBeCloseTo(Math.exp(-0.6), 12);
  });

  it('[M5] several stocks in one job add their kappas; the exact count takes both together', () => {
    const D = 0.4 * 0.8;
    const world = scene({
      jobs: [
        job('T', {
          uses: [
            { of: 'nut', units: 1 },
            { of: 'pin', units: 1 },
          ],
        }),
      ],
      trouble: [trouble('t', 0.4, ['T'])],
      pieces: [spare('n', 'nut'), spare('p1', 'pin'), spare('p2', 'pin')],
    });
    const k = (-Math.log(cdf(1, D)) - Math.log(cdf(2, D))) / D;
    expect(check(world).chance).toBeCloseTo(Math.exp(-0.4 * (1 - 0.8 * (1 - k))), 12);
    // The one nut decides: two pins never run out first.
    expect(check(world).chanceExactStock).toBeCloseTo(Math.exp(-0.4 * 0.2) * cdf(1, D), 12);
  });

  it('[M5] the exact count is never below the bound, for any shared stock', () => {
    const case_ = fc.record({
      rates: fc.array(fc.double({ min: 0.001, max: 1.5, noNaN: true }), { minLength: 1, maxLength: 5 }),
      belts: fc.integer({ min: 0, max: 4 }),
    });
    fc.assert(
      fc.property(case_, ({ rates, belts }) => {
        const world = scene({
          jobs: [fix],
          trouble: rates.map((r, n) => trouble(`t${n}`, r, ['F'])),
          pieces: Array.from({ length: belts }, (_, n) => spare(`b${n}`, 'belt')),
        });
        const { chance, chanceExactStock } = check(world);
        expect(chanceExactStock).toBeGreaterThanOrEqual(chance * (1 - 1e-12));
        expect(chance).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });

  it('[M5] the exact count keeps stocks together that jobs tie together, in any order', () => {
    const uses = (...of: string[]) => of.map((word) => ({ of: word, units: 1 }));
    const jobs = [
      job('xy', { uses: uses('x', 'y') }),
      job('x', { uses: uses('x') }),
      job('y', { uses: uses('y') }),
    ];
    const stocked = [spare('px', 'x'), spare('py', 'y')];
    const exact = (order: readonly string[]) =>
      check(scene({ jobs, trouble: order.map((j) => trouble(`t-${j}`, 0.5, [j])), pieces: stocked }))
        .chanceExactStock;
    const one = Math.exp(-0.4);
    // Nothing at all; or one of x, of y, of both singles; or the one job that takes both.
    const within = one ** 3 * (1 + 0.4 + 0.4 + 0.4 * 0.4 + 0.4);
    for (const order of [
      ['xy', 'x', 'y'],
      ['x', 'y', 'xy'],
      ['y', 'xy', 'x'],
    ]) {
      expect(exact(order)).toBeCloseTo(Math.exp(-0.3) * within, 12);
    }
  });

  it('[M5] the exact count agrees with adding up every number of events', () => {
    // Two troubles share two bolts, one of them takes two at a time.
    const world = scene({
      jobs: [
        job('one', { uses: [{ of: 'bolt', units: 1 }] }),
        job('two', { uses: [{ of: 'bolt', units: 2 }] }),
      ],
      trouble: [trouble('a', 0.7, ['one']), trouble('b', 0.4, ['two'])],
      pieces: [spare('x', 'bolt', 3)],
    });
    const pmf = (n: number, mean: number) => cdf(n, mean) - (n === 0 ? 0 : cdf(n - 1, mean));
    let sum = 0;
    for (let a = 0; a <= 3; a++) for (let b = 0; a + 2 * b <= 3; b++) sum += pmf(a, 0.56) * pmf(b, 0.32);
    expect(check(world).chanceExactStock).toBeCloseTo(Math.exp(-(0.7 + 0.4) * 0.2) * sum, 12);
  });
});
