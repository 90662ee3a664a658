import { describe, expect, it } from 'vitest';
import { ratesOf } from '../../src/failing/rates.ts';
import { kelvins, metres } from '../../src/quantity/units.ts';
import { leg, input, group, failure, times } from './journey.ts';

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
