import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Surface } from '../../src/failing/rate-tables.ts';
import { chanceOfAny, ratesOf } from '../../src/failing/rates.ts';
import { kelvins, metres, millimetres } from '../../src/quantity/units.ts';
import { TRADE_GROUPS } from './trade-tables.ts';
import { leg, input, group, failure, times, JOURNEY } from './journey.ts';

describe('the published worked check', () => {
  // Trade reference, default rates: 3,200 km over five surfaces, every factor at 1.
  const result = ratesOf(input({ legs: JOURNEY }));
  const tyre = group(result, 'tyre');
  const others = result.events - tyre;
  const nonTyre = result.immobilising - tyre * 0.9;

  it('[M1] expects 0.33 tyre events and 0.26 others', () => {
    expect(tyre).toBeCloseTo(0.333, 10);
    expect(others).toBeCloseTo(0.26, 2);
  });

  it('[M1] gives about 13 % for at least one immobilisation that is no tyre', () => {
    expect(chanceOfAny(nonTyre)).toBeGreaterThan(0.125);
    expect(chanceOfAny(nonTyre)).toBeLessThan(0.135);
  });

  it('[M1] strands a vehicle with no kit about 0.44 times, and one with everything about 0.056 times', () => {
    expect(result.immobilising).toBeCloseTo(0.44, 2);
    const left = result.failures.reduce((sum, f) => sum + f.immobilising * (1 - f.restored), 0);
    expect(left).toBeCloseTo(0.056, 3);
  });
});

describe('distance and surface', () => {
  it('[M1] nothing happens on a trip of no distance and no days', () => {
    const result = ratesOf(input({ legs: [leg(0, 'rock')] }));
    expect(result.events).toBe(0);
    expect(result.byReach).toEqual([]);
  });

  it('[M1] legs add up: two legs expect what each expects alone', () => {
    const kms = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 3000 }), fc.constantFrom<Surface>('sealed', 'gravel', 'sand')),
      {
        minLength: 1,
        maxLength: 5,
      },
    );
    fc.assert(
      fc.property(kms, (list) => {
        const legs = list.map(([km, s], n) => ({ ...leg(km, s), id: `l${n}` }));
        const together = ratesOf(input({ legs })).events;
        const apart = legs.reduce((sum, l) => sum + ratesOf(input({ legs: [l] })).events, 0);
        expect(together).toBeCloseTo(apart, 9);
      }),
      { numRuns: 50 },
    );
  });

  it('[M1] more distance, load, stones or heat never lowers any failure', () => {
    const base = {
      km: fc.integer({ min: 1, max: 2000 }),
      ratio: fc.double({ min: 0.3, max: 1.3, noNaN: true }),
    };
    fc.assert(
      fc.property(base.km, base.ratio, (km, ratio) => {
        const low = ratesOf(
          input({ legs: [leg(km, 'gravel')], trip: { load: { front: ratio, rear: ratio, gross: ratio } } }),
        );
        const more = ratio * 1.05;
        const high = ratesOf(
          input({
            legs: [leg(km + 1, 'gravel', { stones: 'sharp', hottest: kelvins(315) })],
            trip: { load: { front: ratio, rear: more, gross: more } },
          }),
        );
        for (const f of low.failures) expect(failure(high, f.failure)?.events).toBeGreaterThan(f.events);
      }),
      { numRuns: 50 },
    );
  });
});

describe('shares', () => {
  it('[M1] a vehicle without a part breaks other things instead, and the group keeps its rate', () => {
    const leafy = ratesOf(input({}));
    const bare = ratesOf(input({ vehicle: { features: new Set() } }));
    expect(group(leafy, 'suspension')).toBeCloseTo(0.04, 12);
    expect(group(bare, 'suspension')).toBeCloseTo(0.04, 12);
    expect(failure(leafy, 'shock-dead')?.events).toBeCloseTo(0.04 * 0.6, 12);
    expect(failure(bare, 'shock-dead')?.events).toBeCloseTo(0.04, 12);
    expect(failure(bare, 'leaf-broken')).toBeUndefined();
  });

  it('[M1] conditions take all of all, one of any and none of none', () => {
    const air = ratesOf(input({ vehicle: { features: new Set(['assist-air-springs', 'coil-rear']) } }));
    expect(failure(air, 'air-spring-burst')?.parts[0]?.share).toBeCloseTo(2 / 9, 12);
    const both = ratesOf(input({ vehicle: { features: new Set(['assist-air-springs', 'leaf-rear']) } }));
    expect(failure(both, 'air-spring-burst')).toBeUndefined();
  });

  it("[M1] a failure's own chance to immobilise goes before its group's", () => {
    const air = ratesOf(input({ vehicle: { features: new Set(['assist-air-springs']) } }));
    const burst = failure(air, 'air-spring-burst');
    expect(burst?.immobilising).toBeCloseTo((burst?.events ?? 0) * 0.05, 12);
  });
});

describe('factors of the vehicle', () => {
  it('[M1] load counts to the fourth power on tyres, fifth on suspension, second on brakes: 110 % is x1.6 on suspension', () => {
    const over = { trip: { load: { front: 0.9, rear: 1.1, gross: 1.1 } } };
    expect(times('suspension', over)).toBeCloseTo(1.1 ** 5, 9);
    expect(times('suspension', over)).toBeCloseTo(1.6, 1);
    expect(times('tyre', over)).toBeCloseTo(1.1 ** 4, 9);
    expect(times('brakes', over)).toBeCloseTo(1.1 ** 2, 9);
    expect(times('wiring', over)).toBe(1);
  });

  it('[M1] the worse axle counts, front or rear', () => {
    expect(times('suspension', { trip: { load: { front: 1.1, rear: 0.7, gross: 0.9 } } })).toBeCloseTo(
      1.1 ** 5,
      9,
    );
    expect(times('suspension', { trip: { load: { front: 0.7, rear: 1.1, gross: 0.9 } } })).toBeCloseTo(
      1.1 ** 5,
      9,
    );
    expect(times('brakes', { trip: { load: { front: 0.7, rear: 1.1, gross: 0.9 } } })).toBeCloseTo(0.81, 9);
  });

  it('[M1] age counts 5 % a year about ten years, held between a half and one and a half', () => {
    expect(times('steering', { vehicle: { ageYears: 14 } })).toBeCloseTo(1.2, 9);
    expect(times('steering', { vehicle: { ageYears: 60 } })).toBeCloseTo(1.5, 9);
    expect(times('steering', { vehicle: { ageYears: 0 } })).toBeCloseTo(0.5, 9);
  });

  it('[M1] twice the distance on the clock is 1.24 times the parts', () => {
    const once = times('steering', { vehicle: { odometerKm: 100_000 } });
    const twice = times('steering', { vehicle: { odometerKm: 200_000 } });
    expect(twice / once).toBeCloseTo(1.238, 3);
    expect(times('steering', { vehicle: { odometerKm: 0 } })).toBeCloseTo(0.5, 9);
    expect(times('steering', { vehicle: { odometerKm: 5_000_000 } })).toBeCloseTo(1.5, 9);
  });

  it.each([
    [1, 0.3],
    [4, 0.6],
    [5.5, 1],
    [6, 2],
    [11, 3],
  ])('[M1] a battery of %d years fails %d times as often', (years, factor) => {
    expect(times('battery', { vehicle: { batteryAgeYears: years } })).toBeCloseTo(factor, 9);
    expect(times('wiring', { vehicle: { batteryAgeYears: years } })).toBe(1);
  });

  it('[M1] care, recent work and the driver multiply', () => {
    expect(
      times('driveline', {
        vehicle: { care: 'neglected', recentWork: ['driveline'] },
        trip: { driver: 'hard' },
      }),
    ).toBeCloseTo(8, 9);
    expect(times('brakes', { vehicle: { care: 'fresh' }, trip: { driver: 'gentle' } })).toBeCloseTo(0.15, 9);
  });

  it('[M1] added circuits add 0.01 each on corrugations, elsewhere in proportion', () => {
    const two = { addedCircuits: 2 };
    expect(group(ratesOf(input({ vehicle: two })), 'wiring')).toBeCloseTo((0.25 + 0.02) / 10, 12);
    expect(times('wiring', { vehicle: two, legs: [leg(500, 'sealed')] })).toBeCloseTo(1.08, 9);
  });

  it('[M1] modifications count only past their threshold and on their surface', () => {
    expect(times('driveline', { vehicle: { lift: millimetres(50) } })).toBe(1);
    expect(times('driveline', { vehicle: { lift: millimetres(75) } })).toBeCloseTo(1.5, 9);
    expect(times('steering', { vehicle: { tyreOversize: 0.12 } })).toBeCloseTo(1.5, 9);
    const locked = { features: new Set(['lockers']) };
    expect(times('driveline', { vehicle: locked })).toBe(1);
    expect(times('driveline', { vehicle: locked, legs: [leg(50, 'rock')] })).toBeCloseTo(2, 9);
    expect(times('body', { trip: { roofOverloaded: true } })).toBeCloseTo(3, 9);
  });

  it('[M1] a known weak point multiplies its failure alone and carries the owner as its source', () => {
    const weak = ratesOf(input({ vehicle: { weakPoints: [{ failure: 'shock-dead', factor: 4 }] } }));
    const plain = ratesOf(input({}));
    expect(failure(weak, 'shock-dead')?.events).toBeCloseTo(
      4 * (failure(plain, 'shock-dead')?.events ?? 0),
      12,
    );
    expect(failure(weak, 'leaf-broken')?.events).toBe(failure(plain, 'leaf-broken')?.events);
    expect(failure(weak, 'shock-dead')?.parts[0]?.factors.map((f) => f.id)).toEqual(['weak-point']);
  });
});

describe('what can be shown', () => {
  it('[M1] every part is base x share x the factors listed, and the parts make the whole', () => {
    const result = ratesOf(
      input({
        vehicle: { ageYears: 13, care: 'good', features: new Set(['lockers', 'fridge']), addedCircuits: 3 },
        trip: { days: 9, campNights: 4, load: { front: 0.95, rear: 1.02, gross: 0.98 } },
        legs: [
          leg(300, 'rock', { iri: 11, stones: 'sharp', dusty: true }),
          leg(80, 'sand', { crossings: { belowHub: 4 } }),
        ],
      }),
    );
    for (const f of result.failures) {
      for (const p of f.parts) {
        expect(p.events).toBeCloseTo(
          p.factors.reduce((x, g) => x * g.factor, p.base * p.share),
          12,
        );
        for (const g of p.factors) expect(g.basis.length).toBeGreaterThan(5);
      }
      expect(f.events).toBeCloseTo(
        f.parts.reduce((x, p) => x + p.events, 0),
        12,
      );
    }
    expect(result.groups.reduce((x, g) => x + g.events, 0)).toBeCloseTo(result.events, 12);
    expect(TRADE_GROUPS.map((g) => g.id)).toEqual(result.groups.map((g) => g.group));
  });
});

describe('distance to help', () => {
  it('[M4] a failure is split by how far help is, at the distances limps are trusted for', () => {
    const legs = [
      leg(100, 'gravel', { id: 'a', help: metres(50_000) }),
      leg(200, 'gravel', { id: 'b', help: metres(50_001) }),
      leg(300, 'gravel', { id: 'c', help: metres(290_000) }),
      leg(400, 'gravel', { id: 'd', help: metres(301_000) }),
    ];
    const result = ratesOf(input({ legs }));
    const tyre = result.byReach.filter((r) => r.failure === 'tyre-fails');
    expect(tyre.map((r) => [r.reach, r.help, Math.round(r.events * 1000)])).toEqual([
      ['near', 50_000, 10],
      ['far', 290_000, 50],
      ['remote', 301_000, 40],
    ]);
    expect(tyre[0]?.immobilising).toBeCloseTo(0.009, 12);
  });

  it('[M1] what days bring is spread over the legs by distance and lost nowhere', () => {
    const legs = [
      leg(100, 'sealed', { id: 'a', help: metres(0) }),
      leg(300, 'sealed', { id: 'b', help: metres(1e6) }),
    ];
    const result = ratesOf(input({ legs, trip: { days: 365 } }));
    const battery = result.byReach.filter((r) => r.failure === 'battery-fails');
    expect(battery.map((r) => r.reach)).toEqual(['beside', 'remote']);
    expect(battery[0]?.events).toBeCloseTo(0.0012 + 0.025, 12);
    expect(battery[1]?.events).toBeCloseTo(0.0036 + 0.075, 12);
    const still = legs.map((l) => ({ ...l, distance: metres(0) }));
    const camp = ratesOf(input({ legs: still, trip: { days: 365 } })).byReach;
    expect(camp.map((r) => r.events)).toEqual([expect.closeTo(0.05, 12), expect.closeTo(0.05, 12)]);
    const parked = ratesOf(input({ legs: [], trip: { days: 365 } }));
    expect(parked.byReach.reduce((x, r) => x + r.events, 0)).toBeCloseTo(0.1, 12);
  });
});
