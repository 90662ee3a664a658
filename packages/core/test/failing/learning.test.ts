import poisson from '@stdlib/stats-base-dists-poisson';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gammaBelow, gammaQuantile, logGamma } from '../../src/failing/gamma.ts';
import { learnedRate } from '../../src/failing/learning.ts';

describe('the gamma distribution', () => {
  it('[M1] agrees with the Poisson distribution of an outside library: P(G(k) > x) = P(N(x) < k)', () => {
    for (const k of [1, 2, 3, 5, 11, 40])
      for (const x of [0.01, 0.3, 1, 2.5, 7, 20, 60])
        expect(1 - gammaBelow(k, x), `k ${k}, x ${x}`).toBeCloseTo(poisson.cdf(k - 1, x), 12);
  });

  it('[M1] agrees with printed quantiles of chi-square, which is twice a gamma of half its degrees', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper critical values: 0.95 (recalled, not re-read).
    const printed = [
      [1, 3.841],
      [3, 7.815],
      [5, 11.07],
      [10, 18.307],
    ] as const;
    for (const [degrees, value] of printed)
      expect(2 * gammaQuantile(degrees / 2, 0.95)).toBeCloseTo(value, 2);
  });

  it('[M1] knows factorials, and its quantile undoes its chance', () => {
    expect(Math.exp(logGamma(6))).toBeCloseTo(120, 9);
    expect(Math.exp(logGamma(0.5))).toBeCloseTo(Math.sqrt(Math.PI), 12);
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (k, p) => {
          expect(gammaBelow(k, gammaQuantile(k, p))).toBeCloseTo(p, 9);
        },
      ),
      { numRuns: 200 },
    );
    expect(() => gammaBelow(0, 1)).toThrow('above 0');
  });
});

describe('learning from a log', () => {
  const tyre = { group: 'tyre', title: 'Tyres', shape: 1.8 };

  it('[M1] is (k + n) / (k / lambda + distance), the conjugate rule of textbooks', () => {
    // lambda 2.5 per 10,000 km on corrugations, 8,000 km, 3 events: by hand (1.8 + 3) / (1.8 / 2.5 + 0.8) = 3.157895.
    const learned = learnedRate({ ...tyre, expected: 2.5 * 0.8, events: 3 });
    expect(2.5 * learned.posterior.mean).toBeCloseTo(4.8 / 1.52, 12);
    expect(2.5 * learned.posterior.mean).toBeCloseTo(3.157895, 6);
    expect(learned.prior.mean).toBe(1);
    expect(learned.posterior.shape).toBeCloseTo(4.8, 12);
  });

  it('[M1] the prior lies where the trade says: about three times less to three times more for shape 1.8', () => {
    const { prior } = learnedRate({ ...tyre, expected: 0, events: 0 });
    expect(prior.high / prior.low).toBeGreaterThan(9);
    expect(prior.high / prior.low).toBeLessThan(25);
  });

  it('[M1] falls with a quiet distance, rises with events, and grows surer with both', () => {
    const quiet = learnedRate({ ...tyre, expected: 2, events: 0 }).posterior;
    const busy = learnedRate({ ...tyre, expected: 2, events: 6 }).posterior;
    const same = learnedRate({ ...tyre, expected: 20, events: 20 }).posterior;
    expect(quiet.mean).toBeCloseTo(1.8 / 3.8, 12);
    expect(busy.mean).toBeCloseTo(7.8 / 3.8, 12);
    expect(same.mean).toBe(1);
    const { prior } = learnedRate({ ...tyre, expected: 0, events: 0 });
    expect(same.high - same.low).toBeLessThan((prior.high - prior.low) / 3);
  });
});
