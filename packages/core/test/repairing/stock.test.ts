import poisson from '@stdlib/stats-base-dists-poisson';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SCORE_UNIT } from '../../src/choosing/problem.ts';
import { kappa, shortfallNepers } from '../../src/repairing/kappa.ts';
import type { Scene, ScenePiece, Trouble } from '../../src/repairing/scene.ts';
import { built, chanceWith, does, job, lossWith, piece, scene, trouble } from './hand-made.ts';

const holding = (id: string, units: number, of = 'P-BELT'): ScenePiece =>
  piece(id, [], { stock: [{ of, units }] });

/** Chance of no stranding, summed over how often each trouble comes: what M5's closed form says in one line. */
function exactNepers(
  streams: readonly { readonly expected: number; readonly p: number }[],
  s: number,
): number {
  let stays = 0;
  let repairs = 0;
  for (const { expected, p } of streams) {
    stays += expected * (1 - p);
    repairs += expected * p;
  }
  // Repairs are a thinned Poisson stream, and independent streams add: sum of P(N = k) for k = 0..s, term by term.
  let term = Math.exp(-repairs);
  let within = 0;
  for (let k = 0; k <= s; k++) {
    within += term;
    term *= repairs / (k + 1);
  }
  return stays - Math.log(within);
}

describe('[M5] kappa', () => {
  it('[M5] agrees with a Poisson distribution function written by others', () => {
    // @stdlib/stats-base-dists-poisson, an independent implementation.
    for (const mean of [0.001, 0.05, 0.5, 1, 3, 12, 40])
      for (const s of [0, 1, 2, 5, 20, 60]) {
        const cdf = poisson.cdf(s, mean);
        if (cdf < 1 - 1e-6)
          expect(shortfallNepers(s, mean) / -Math.log(cdf), `${s} ${mean}`).toBeCloseTo(1, 8);
        else expect(shortfallNepers(s, mean)).toBeLessThan(1.1e-6);
      }
  });

  it('[M5] adds up to published expected shortages', () => {
    // E(X - s)+ is the sum of 1 - F(k) over k >= s. Poisson losses in the tests of stockpyl (after Snyder and Shen,
    // Fundamentals of Supply Chain Theory): mean 7, s 5; mean 47, s 50; mean 200, s 220.
    for (const [mean, s, published] of [
      [7, 5, 2.292600125697305],
      [47, 50, 1.514546939496945],
      [200, 220, 0.536005857158494],
    ] as const) {
      let shortage = 0;
      for (let k = s; k < s + 400; k++) shortage += -Math.expm1(-shortfallNepers(k, mean));
      expect(shortage).toBeCloseTo(published, 9);
    }
  });

  it('[M5] none aboard loses all, plenty loses nothing, more never loses more', () => {
    expect(kappa(0, 0.3)).toBe(1);
    expect(kappa(40, 0.3)).toBeLessThan(1e-15);
    expect(kappa(1, 0)).toBe(0);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), fc.double({ min: 1e-6, max: 20, noNaN: true }), (s, d) => {
        expect(kappa(s + 1, d)).toBeLessThanOrEqual(kappa(s, d));
        expect(kappa(s, d)).toBeGreaterThanOrEqual(0);
        expect(kappa(s, d)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('[M5] small means keep their digits: with one aboard, half the mean', () => {
    // -ln((1 + D) e^-D) / D = D/2 - D^2/3 + ...
    expect(kappa(1, 1e-6) / 5e-7).toBeCloseTo(1, 5);
  });
});

const belt = (s: number, change: Partial<Trouble> = {}): Scene =>
  scene({
    jobs: [job('CO-03', { uses: [{ of: 'P-BELT', units: 1 }] })],
    trouble: [trouble('belt', ['CO-03'], { expected: 0.3, restored: 0.9, ...change })],
    pieces: Array.from({ length: s }, (_, n) => holding(`b${n}`, 1)),
  });

describe('[M5] spares', () => {
  it.each([1, 2, 3])('[M5] %d aboard for one user is exact: the closed form of the sum over Poisson', (s) => {
    const answer = built(belt(s));
    const ids = Array.from({ length: s }, (_, n) => `b${n}`);
    const exact = exactNepers([{ expected: 0.3, p: 0.9 }], s);
    expect(Math.abs(lossWith(answer, ids) * SCORE_UNIT - exact)).toBeLessThan(SCORE_UNIT);
  });

  it('[M5] carried spares count one by one, and none is as good as no job', () => {
    const answer = built(belt(3));
    expect(lossWith(answer, [])).toBe(Math.round(0.3 / SCORE_UNIT));
    for (const s of [1, 2, 3]) {
      const ids = Array.from({ length: s }, (_, n) => `b${n}`);
      const exact = exactNepers([{ expected: 0.3, p: 0.9 }], s);
      expect(Math.abs(lossWith(answer, ids) * SCORE_UNIT - exact)).toBeLessThan(SCORE_UNIT);
    }
    expect(answer.demand.get('P-BELT')).toBeCloseTo(0.27, 12);
  });

  it('[M5] for two users it is a lower bound on the chance, and not a silly one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.6, noNaN: true }),
        fc.double({ min: 0.01, max: 0.6, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 3 }),
        (x, y, p, q, s) => {
          const uses = [{ of: 'P-CLAMP', units: 1 }];
          const answer = built(
            scene({
              jobs: [job('A', { uses }), job('B', { uses })],
              trouble: [
                trouble('a', ['A'], { expected: x, restored: p }),
                trouble('b', ['B'], { expected: y, restored: q }),
              ],
              pieces: [holding('stock', s, 'P-CLAMP')],
            }),
          );
          const stated = lossWith(answer, ['stock']) * SCORE_UNIT;
          const exact = exactNepers(
            [
              { expected: x, p },
              { expected: y, p: q },
            ],
            s,
          );
          expect(stated).toBeGreaterThanOrEqual(exact - 2 * SCORE_UNIT);
          // Both users are repaired by the same job's worth: for equal demand the chord is the curve itself.
          expect(stated - exact).toBeLessThan(2 * SCORE_UNIT);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('[M5] where one of two users goes without, the bound is strict', () => {
    const uses = [{ of: 'P-CLAMP', units: 1 }];
    const answer = built(
      scene({
        jobs: [job('A', { uses }), job('B', { uses, needs: [{ kind: 'function', fn: 'grip' }] })],
        trouble: [
          trouble('a', ['A'], { expected: 0.4, restored: 1 }),
          trouble('b', ['B'], { expected: 0.4, restored: 1 }),
        ],
        pieces: [holding('stock', 1, 'P-CLAMP'), piece('g', [does('grip')])],
      }),
    );
    // Without pliers only A uses clamps; demand is still reckoned for both.
    const exact = exactNepers([{ expected: 0.4, p: 1 }], 1) + 0.4;
    expect(lossWith(answer, ['stock']) * SCORE_UNIT).toBeGreaterThan(exact + 1e-3);
  });

  it('[M5] fluids: bottles add up, and what is left over does half a job for nobody', () => {
    const uses = [{ of: 'coolant', units: 3 }];
    const bottles = [
      holding('five', 5, 'coolant'),
      holding('one', 1, 'coolant'),
      holding('half', 0.5, 'coolant'),
    ];
    const answer = built(
      scene({
        jobs: [job('J', { uses })],
        trouble: [trouble('t', ['J'], { expected: 0.2, restored: 1 })],
        pieces: bottles,
      }),
    );
    expect(chanceWith(answer, ['one', 'half'])).toBe(0);
    const once = 1 - kappa(1, 0.2);
    const twice = 1 - kappa(2, 0.2);
    expect(chanceWith(answer, ['five'])).toBeCloseTo(once, 4);
    expect(chanceWith(answer, ['five', 'half'])).toBeCloseTo(once, 4);
    expect(chanceWith(answer, ['five', 'one'])).toBeCloseTo(twice, 4);
  });

  it('[M5] five litres are one filling of three, not two', () => {
    const uses = [{ of: 'coolant', units: 3 }];
    const pieces = [holding('five', 5, 'coolant')];
    const answer = built(scene({ jobs: [job('J', { uses })], trouble: [trouble('t', ['J'])], pieces }));
    expect(answer.options.map((o) => o.stock)).toEqual([[{ of: 'coolant', times: 1 }]]);
  });

  it('[M5] half litres add up exactly', () => {
    const answer = built(
      scene({
        jobs: [job('J', { uses: [{ of: 'brake', units: 1 }] })],
        trouble: [trouble('t', ['J'])],
        pieces: ['a', 'b', 'c'].map((id) => holding(id, 0.35, 'brake')),
      }),
    );
    expect(chanceWith(answer, ['a', 'b'])).toBe(0);
    expect(chanceWith(answer, ['a', 'b', 'c'])).toBeGreaterThan(0.7);
  });

  it('[M5] several stocks in one job add their kappas', () => {
    const answer = built(
      scene({
        jobs: [
          job('J', {
            uses: [
              { of: 'P-UJ', units: 1 },
              { of: 'grease', units: 1 },
            ],
          }),
        ],
        trouble: [trouble('t', ['J'], { expected: 0.5, restored: 1 })],
        pieces: [holding('uj', 1, 'P-UJ'), holding('g2', 2, 'grease')],
      }),
    );
    expect(chanceWith(answer, ['uj'])).toBe(0);
    expect(chanceWith(answer, ['uj', 'g2'])).toBeCloseTo(1 - kappa(1, 0.5) - kappa(2, 0.5), 4);
  });

  it('[M5] twenty strings in one box are one level, worth all they hold', () => {
    const answer = built(
      scene({
        jobs: [job('WT-02', { uses: [{ of: 'P-STRING', units: 1 }] })],
        trouble: [trouble('t', ['WT-02'], { expected: 3, restored: 1 })],
        pieces: [holding('box', 20, 'P-STRING')],
      }),
    );
    expect(answer.options.map((o) => o.stock)).toEqual([[{ of: 'P-STRING', times: 20 }]]);
    expect(chanceWith(answer, ['box'])).toBeCloseTo(1 - kappa(20, 3), 7);
  });

  it('[M5] demand counts what could be had, not copies kept for asking "what if"', () => {
    const grip = { kind: 'function' as const, fn: 'grip' };
    const of = (change: Partial<ScenePiece>) =>
      built(
        scene({
          jobs: [job('J', { needs: [grip], uses: [{ of: 'P-X', units: 1 }] })],
          trouble: [trouble('t', ['J'], { expected: 0.5, restored: 1 })],
          pieces: [
            holding('x', 1, 'P-X'),
            piece('poor', [does('grip', { grade: 'last-resort' })]),
            piece('good', [does('grip')], change),
          ],
        }),
      ).demand.get('P-X');
    expect(of({})).toBeCloseTo(0.5, 12);
    expect(of({ owned: false, cents: null, pin: 'never' })).toBeCloseTo(0.25, 12);
  });
});
