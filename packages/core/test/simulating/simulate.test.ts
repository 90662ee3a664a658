import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { describe, expect, test } from 'vitest';
import type { Randomness } from '@waymend/core/simulating/simulate';
import { simulate } from '@waymend/core/simulating/simulate';
import { strataOf } from '@waymend/core/simulating/strata';
import type { SimulatedKit, TripLaw } from '@waymend/core/simulating/trip-law';
import { poissonWeights } from '@waymend/core/simulating/trip-law';

const randomness: Randomness = (stream) => {
  const generator = xoroshiro128plus(1234 + 7919 * stream);
  return () => uniformFloat64(generator);
};

function simulated(law: TripLaw, kit: SimulatedKit, trips: number) {
  const outcome = simulate(law, [kit], { trips, randomness });
  if (outcome.kind !== 'simulated' || outcome.kits[0] === undefined) throw new Error(outcome.kind);
  return outcome.kits[0];
}

const always = { stock: [], share: [1, 1, 1] };

describe('[M12] drawn trips', () => {
  const law: TripLaw = { expected: [0.4, 0.9, 0.05] };
  const answers = [[{ chance: 0.8, uses: [] }], [{ chance: 0.5, uses: [] }], []];

  test('[M12] agree with the closed form of M5 where no stock runs short', () => {
    const found = simulated(law, { ...always, answers }, 200_000);
    const exact = Math.exp(-(0.4 * 0.2 + 0.9 * 0.5 + 0.05));
    expect(found.interval.low).toBeLessThan(exact);
    expect(found.interval.high).toBeGreaterThan(exact);
    expect(found.interval.high - found.interval.low).toBeLessThan(0.005);
  });

  test('[M12] one stock shared by two troubles: the chance is the Poisson sum P(N <= 2)', () => {
    const shared = [
      [{ chance: 1, uses: [{ stock: 0, units: 1 }] }],
      [{ chance: 1, uses: [{ stock: 0, units: 1 }] }],
      [],
    ];
    const found = simulated(
      { expected: [0.4, 0.9, 0] },
      { answers: shared, stock: [2], share: [1, 1, 1] },
      200_000,
    );
    const exact = Math.exp(-1.3) * (1 + 1.3 + 1.3 ** 2 / 2);
    expect(found.interval.low).toBeLessThan(exact);
    expect(found.interval.high).toBeGreaterThan(exact);
  });

  test('[M12] when the better answer has run out the next one is tried', () => {
    const kit = {
      answers: [
        [
          { chance: 1, uses: [{ stock: 0, units: 1 }] },
          { chance: 0.5, uses: [] },
        ],
      ],
      stock: [1],
      share: [1],
    };
    const found = simulated({ expected: [1] }, kit, 200_000);
    // First failure always, each later one with a half: sum over n of P(n) 0.5^(n-1).
    const exact = Math.exp(-1) + 2 * (Math.exp(-0.5) - Math.exp(-1));
    expect(found.interval.low).toBeLessThan(exact);
    expect(found.interval.high).toBeGreaterThan(exact);
    expect(found.repairs[0]?.[0]).toBeCloseTo(1 - Math.exp(-1), 2);
  });

  test('[M12] 95 % intervals of 400 simulations miss the truth about as often as they should', () => {
    const exact = Math.exp(-(0.4 * 0.2 + 0.9 * 0.5 + 0.05));
    let missed = 0;
    for (let seed = 0; seed < 400; seed++) {
      const outcome = simulate(law, [{ ...always, answers }], {
        trips: 300,
        randomness: (stream) => {
          const generator = xoroshiro128plus(seed * 104_729 + stream);
          return () => uniformFloat64(generator);
        },
      });
      if (outcome.kind !== 'simulated') throw new Error(outcome.kind);
      const { low, high } = outcome.kits[0]?.interval ?? { low: 1, high: 0 };
      if (exact < low || exact > high) missed += 1;
    }
    // Binomial(400, 0.05): 20 expected; 8 and 36 are both rarer than 1 in 500 (exact tail sums).
    expect(missed).toBeGreaterThan(7);
    expect(missed).toBeLessThan(37);
  });

  test('[M12] the trips are the same whatever the kit: a better kit never loses a trip that a worse one survives', () => {
    const better = answers.map((list) => list.map((a) => ({ ...a, chance: Math.min(1, a.chance + 0.1) })));
    const outcome = simulate(
      law,
      [
        { ...always, answers },
        { ...always, answers: better },
      ],
      { trips: 20_000, randomness },
    );
    if (outcome.kind !== 'simulated') throw new Error(outcome.kind);
    const [first, second] = outcome.kits;
    expect(outcome.against[1]?.worse).toBe(0);
    expect(outcome.against[1]?.better).toBeCloseTo((second?.unaided ?? 0) - (first?.unaided ?? 0), 10);
  });

  test('[M12] a lighter kit meets the same trips with fewer failures', () => {
    const light = simulated(law, { ...always, answers, share: [0.5, 0.5, 0.5] }, 200_000);
    const exact = Math.exp(-(0.4 * 0.2 + 0.9 * 0.5 + 0.05) / 2);
    expect(light.interval.low).toBeLessThan(exact);
    expect(light.interval.high).toBeGreaterThan(exact);
  });

  test('[M12] the same input gives the same numbers, and what strands adds up to what does not come home', () => {
    const a = simulated(law, { ...always, answers }, 5_000);
    const b = simulated(law, { ...always, answers }, 5_000);
    expect(a).toStrictEqual(b);
    const stranded = a.stranded.reduce((sum, s) => sum + s, 0);
    expect(1 - a.unaided).toBeCloseTo(stranded, 6);
  });

  test('[M12] nothing can happen: every trip comes home without a draw', () => {
    const found = simulated({ expected: [0, 0, 0] }, { ...always, answers }, 100);
    expect(found.unaided).toBe(1);
  });

  test('[M12] asked to stop it stops', () => {
    const outcome = simulate(law, [{ ...always, answers }], {
      trips: 10_000,
      randomness,
      shouldStop: () => true,
    });
    expect(outcome.kind).toBe('stopped');
  });
});

describe('[M12] strata', () => {
  test('[M12] weights are Poisson terms and add up to one', () => {
    // e^-2 = 0.1353, 2 e^-2 = 0.2707, 2 e^-2 = 0.2707, 4/3 e^-2 = 0.1804 (any printed Poisson table).
    const weights = poissonWeights(2, 1e-12);
    expect(weights.slice(0, 4).map((w) => Number(w.toFixed(4)))).toStrictEqual([
      0.1353, 0.2707, 0.2707, 0.1804,
    ]);
    expect(weights.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 11);
  });

  test('[M12] every stratum that weighs anything is drawn, the quiet one is not', () => {
    const strata = strataOf(1.5, 1000);
    expect(strata[0]?.trips).toBe(0);
    expect(strata.slice(1).every((s) => s.trips >= 2)).toBe(true);
    const drawn = strata.reduce((sum, s) => sum + s.trips, 0);
    expect(drawn).toBeGreaterThanOrEqual(1000);
    expect(drawn).toBeLessThan(1000 + 2 * strata.length);
  });
});
