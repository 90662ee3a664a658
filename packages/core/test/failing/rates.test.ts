import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RateInput, RateLeg, TripFacts, VehicleFacts } from '../../src/failing/rate-input.ts';
import type { RateResult } from '../../src/failing/rate-result.ts';
import type { Surface } from '../../src/failing/rate-tables.ts';
import { chanceOfAny, ratesOf } from '../../src/failing/rates.ts';
import { kelvins, metres, millimetres } from '../../src/quantity/units.ts';
import { TABLES, TRADE_GROUPS } from './trade-tables.ts';

const vehicle: VehicleFacts = {
  features: new Set(['leaf-rear', 'coil-front']),
  care: 'average',
  lift: metres(0),
  tyreOversize: 0,
  addedCircuits: 0,
  recentWork: [],
  weakPoints: [],
};
const trip: TripFacts = {
  days: 0,
  campNights: 0,
  driver: 'average',
  load: { front: 1, rear: 1, gross: 1 },
  roofOverloaded: false,
};

function leg(km: number, surface: Surface, more: Partial<RateLeg> = {}): RateLeg {
  return {
    id: `${surface}-${km}`,
    distance: metres(km * 1000),
    surface,
    help: metres(100_000),
    stones: 'none',
    dusty: false,
    doubtfulFills: 0,
    resonancePace: false,
    crossings: {},
    ...more,
  };
}

function input(change: {
  vehicle?: Partial<VehicleFacts>;
  trip?: Partial<TripFacts>;
  legs?: readonly RateLeg[];
}): RateInput {
  return {
    tables: TABLES,
    vehicle: { ...vehicle, ...change.vehicle },
    trip: { ...trip, ...change.trip },
    legs: change.legs ?? [leg(1000, 'corrugated')],
  };
}

const group = (result: RateResult, id: string) =>
  result.groups.find((g) => g.group === id)?.events ?? Number.NaN;
const failure = (result: RateResult, id: string) => result.failures.find((f) => f.failure === id);
/** How many times more often a group fails with a change than without. */
function times(id: string, change: Parameters<typeof input>[0]): number {
  const legs = change.legs ?? [leg(1000, 'corrugated')];
  const plain = legs.map((l) => leg(l.distance / 1000, l.surface));
  return group(ratesOf(input(change)), id) / group(ratesOf(input({ legs: plain })), id);
}

const JOURNEY = [
  leg(1200, 'sealed'),
  leg(1000, 'gravel'),
  leg(700, 'corrugated'),
  leg(50, 'rock'),
  leg(250, 'sand'),
];

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

describe('factors of the leg', () => {
  it('[M1] roughness counts only as the difference from what the surface stands for', () => {
    expect(times('suspension', { legs: [leg(100, 'corrugated', { iri: 10 })] })).toBeCloseTo(1, 9);
    expect(times('suspension', { legs: [leg(100, 'corrugated', { iri: 14 })] })).toBeCloseTo(5.6 / 3.5, 9);
    expect(times('suspension', { legs: [leg(100, 'sealed', { iri: 7 })] })).toBeCloseTo(2.05, 9);
    expect(times('suspension', { legs: [leg(100, 'sealed', { iri: 1 })] })).toBeCloseTo(1, 9);
    expect(times('tyre', { legs: [leg(100, 'sealed', { iri: 7 })] })).toBe(1);
  });

  it('[M1] heat, cold and altitude count past their threshold', () => {
    const at = (c: number) => kelvins(c + 273.15);
    expect(times('cooling', { legs: [leg(100, 'gravel', { hottest: at(35) })] })).toBe(1);
    expect(
      times('cooling', { legs: [leg(100, 'gravel', { hottest: at(41), altitude: metres(3500) })] }),
    ).toBeCloseTo(1.95, 9);
    expect(times('battery', { legs: [leg(100, 'gravel', { coldest: at(-15) })] })).toBeCloseTo(3, 9);
    expect(times('battery', { legs: [leg(100, 'gravel', { coldest: at(-5) })] })).toBe(1);
  });

  it('[M1] soft tyres in heat fail three times as often, where firm ones fail half as much again', () => {
    const hottest = kelvins(40 + 273.15);
    expect(times('tyre', { legs: [leg(100, 'gravel', { hottest })] })).toBeCloseTo(1.5, 9);
    expect(times('tyre', { legs: [leg(100, 'gravel', { hottest, softTyres: true })] })).toBeCloseTo(3, 9);
    expect(times('cooling', { legs: [leg(100, 'gravel', { hottest, softTyres: true })] })).toBeCloseTo(
      1.5,
      9,
    );
    // The trade gives no figure for cooler days.
    expect(times('tyre', { legs: [leg(100, 'gravel', { softTyres: true })] })).toBe(1);
  });

  it('[M1] stones, pace and dust count on their groups', () => {
    expect(times('tyre', { legs: [leg(100, 'gravel', { stones: 'staked' })] })).toBeCloseTo(4, 9);
    expect(times('suspension', { legs: [leg(100, 'corrugated', { resonancePace: true })] })).toBeCloseTo(
      2.5,
      9,
    );
    expect(times('charging-starting', { legs: [leg(100, 'sand', { dusty: true })] })).toBeCloseTo(1.5, 9);
  });
});

describe('what does not grow with distance', () => {
  it('[M1] nights of frost wax summer diesel: by night, on diesels only, and on one failure only', () => {
    const coldest = kelvins(-12 + 273.15);
    const legs = [leg(300, 'gravel', { coldest }), leg(100, 'sealed')];
    const frost = (change: Parameters<typeof input>[0]) => {
      const result = ratesOf(input({ legs, trip: { days: 9, campNights: 6 }, ...change }));
      const parts = result.failures.flatMap((f) =>
        f.parts.filter((p) => p.kind === 'frost').map((p) => [f.failure, p.events]),
      );
      return { parts, waxed: failure(result, 'diesel-waxed')?.events ?? 0 };
    };
    const diesel = { features: new Set(['diesel']) };
    // Eight nights between nine days, three quarters of the way in frost.
    expect(frost({ vehicle: diesel }).waxed).toBeCloseTo(8 * 0.75 * 0.05, 12);
    expect(frost({ vehicle: diesel }).parts.map(([id]) => id)).toEqual(['diesel-waxed']);
    expect(frost({ vehicle: diesel, trip: { days: 1, campNights: 4 } }).waxed).toBeCloseTo(
      4 * 0.75 * 0.05,
      12,
    );
    expect(frost({}).parts).toEqual([]);
    const winter = [leg(300, 'gravel', { coldest, winterFuel: true }), leg(100, 'sealed')];
    expect(frost({ vehicle: diesel, legs: winter }).parts).toEqual([]);
    const mild = [leg(300, 'gravel', { coldest: kelvins(-9 + 273.15) })];
    expect(frost({ vehicle: diesel, legs: mild }).parts).toEqual([]);
    expect(frost({ vehicle: diesel, trip: { days: 1, campNights: 0 } }).parts).toEqual([]);
    // Distance gives a weight of nothing nothing.
    expect(frost({ vehicle: diesel, legs: mild }).waxed).toBe(0);
  });

  it('[M1] a day and a camp night with a fridge and no sun wear the battery, as entries of their own', () => {
    const camped = { days: 20, campNights: 15 };
    const fridge = ratesOf(input({ vehicle: { features: new Set(['fridge']) }, trip: camped }));
    const days = failure(fridge, 'battery-fails')?.parts.find((p) => p.kind === 'days');
    expect(days?.events).toBeCloseTo((20 / 365) * 0.1 + 15 * 0.0005, 12);
    expect(days?.leg).toBeNull();
    const sunny = ratesOf(input({ vehicle: { features: new Set(['fridge', 'solar']) }, trip: camped }));
    expect(failure(sunny, 'battery-fails')?.parts.find((p) => p.kind === 'days')?.events).toBeCloseTo(
      2 / 365,
      12,
    );
  });

  it('[M1] crossings fall on wiring, starting, driveline, cooling and engine by depth and add up', () => {
    const wet = ratesOf(input({ legs: [leg(0, 'gravel', { crossings: { hubToSill: 2, aboveIntake: 1 } })] }));
    expect(wet.events).toBeCloseTo(2 * 0.005 + 0.1, 12);
    expect(group(wet, 'driveline')).toBeCloseTo(0.11 / 4, 12);
    expect(group(wet, 'engine')).toBeCloseTo(0.11 * 0.15, 12);
    expect(group(wet, 'brakes')).toBe(0);
  });

  it('[M1] dust brings filter events to the filter, doubtful fills to the whole fuel group', () => {
    const dry = ratesOf(input({ legs: [leg(1000, 'sand', { dusty: true, doubtfulFills: 3 })] }));
    const parts = failure(dry, 'air-filter')?.parts ?? [];
    expect(parts.find((p) => p.kind === 'dust')?.events).toBeCloseTo(0.05, 12);
    expect(parts.find((p) => p.kind === 'fills')?.events).toBeCloseTo(0.06 / 3, 12);
    expect(failure(dry, 'fuel-air-fails')?.parts.map((p) => p.kind)).toEqual(['distance', 'fills']);
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
