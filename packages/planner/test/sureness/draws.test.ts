import { FAILURE_GROUPS } from '@waymend/catalogue/failures/groups';
import { gammaBelow, gammaQuantile } from '@waymend/core/failing/gamma';
import { describe, expect, it } from 'vitest';
import { seeded } from '../../src/simulate/randomness.ts';
import { bandOf, chanceUnder } from '../../src/sureness/band.ts';
import { rateDraws } from '../../src/sureness/draws.ts';

const PRIORS = [
  { id: 'tyre', shape: 1.8 },
  { id: 'battery', shape: 5.1 },
];
const of = (draws: ReturnType<typeof rateDraws>, group: string): number[] =>
  draws.map((d) => d.get(group) ?? Number.NaN);
const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

describe('[M11] beliefs about the rates', () => {
  it('[M11] have the mean of the planned rate and the variance of the gamma prior', () => {
    const draws = rateDraws(PRIORS, 4_000, seeded(3));
    for (const { id, shape } of PRIORS) {
      const values = of(draws, id);
      expect(mean(values)).toBeCloseTo(1, 2);
      expect(mean(values.map((v) => (v - 1) ** 2))).toBeCloseTo(1 / shape, 1);
    }
  });

  it('[M11] meet each slice of equal chance exactly once', () => {
    const draws = rateDraws(PRIORS, 50, seeded(9));
    for (const { id, shape } of PRIORS) {
      const slices = of(draws, id).map((v) => Math.floor(gammaBelow(shape, shape * v) * 50));
      expect([...slices].sort((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, n) => n));
    }
  });

  it('[M11] are the same for the same seed and others for another', () => {
    expect(rateDraws(PRIORS, 20, seeded(1))).toEqual(rateDraws(PRIORS, 20, seeded(1)));
    expect(rateDraws(PRIORS, 20, seeded(1))).not.toEqual(rateDraws(PRIORS, 20, seeded(2)));
  });

  it('[M11] drawn together rise and fall together, apart they do not', () => {
    const rises = (together: boolean): number => {
      const draws = rateDraws(PRIORS, 400, seeded(5), together);
      const tyre = of(draws, 'tyre');
      const battery = of(draws, 'battery');
      return tyre.filter((t, n) => t > 1 === (battery[n] ?? 0) > 1).length / tyre.length;
    };
    expect(rises(true)).toBeGreaterThan(0.85);
    expect(rises(false)).toBeLessThan(0.65);
  });

  // A lognormal rate within a factor f for nine beliefs in ten has sigma = ln f / 1.645 and the squared coefficient of variation
  // exp(sigma^2) - 1; the gamma of the same mean and variance has the shape 1 / that.
  it('[M11] the shape of each group is that of the factor its rate is believed within', () => {
    for (const { id, gammaShape, factor90 } of FAILURE_GROUPS) {
      const shape = 1 / Math.expm1((Math.log(factor90) / 1.645) ** 2);
      expect({ id, off: Math.abs(shape / gammaShape - 1) < 0.04 }).toEqual({ id, off: true });
    }
  });
});

describe('[M11] the band round a chance', () => {
  it('[M11] for one group is the prior turned through exp(-open x rate)', () => {
    const [tyre] = PRIORS;
    const open = new Map([['tyre', 0.3]]);
    const band = bandOf(open, rateDraws(tyre === undefined ? [] : [tyre], 5_000, seeded(1)));
    const at = (p: number): number => Math.exp((-0.3 * gammaQuantile(1.8, p)) / 1.8);
    expect(band.low).toBeCloseTo(at(0.95), 2);
    expect(band.median).toBeCloseTo(at(0.5), 2);
    expect(band.high).toBeCloseTo(at(0.05), 2);
  });

  it('[M11] is wider when every group is worse or better at once', () => {
    const open = new Map([
      ['tyre', 0.2],
      ['battery', 0.2],
    ]);
    const apart = bandOf(open, rateDraws(PRIORS, 2_000, seeded(1)));
    const together = bandOf(open, rateDraws(PRIORS, 2_000, seeded(1), true));
    expect(together.high - together.low).toBeGreaterThan(apart.high - apart.low);
    expect(chanceUnder(open, new Map())).toBeCloseTo(Math.exp(-0.4), 12);
  });
});
