import { FAILURE_GROUPS } from '@waymend/catalogue/failures/groups';
import { RATE_FACTORS } from '@waymend/catalogue/rates/all';
import type { RateTables } from '@waymend/core/failing/rate-tables';
import { chanceOfAny, ratesOf } from '@waymend/core/failing/rates';
import type { RateLeg } from '@waymend/core/failing/rate-input';
import { metres } from '@waymend/core/quantity/units';
import { describe, expect, it } from 'vitest';

/** The catalogue's own tables, one failure a group, so that only rates and factors speak. */
const tables: RateTables = {
  groups: FAILURE_GROUPS,
  failures: FAILURE_GROUPS.map((g) => ({ id: g.id, group: g.id, title: g.title, share: 1 })),
  factors: RATE_FACTORS,
};

function leg(km: number, surface: RateLeg['surface']): RateLeg {
  return {
    id: surface,
    distance: metres(km * 1000),
    surface,
    help: metres(0),
    stones: 'none',
    dusty: false,
    doubtfulFills: 0,
    resonancePace: false,
    crossings: {},
  };
}

describe("the catalogue's rates", () => {
  it('[M1] give the published worked check: 0.33 tyre events, 0.26 others, 13 %, 0.44 stranded with no kit', () => {
    // Trade reference: 1,200 / 1,000 / 700 / 50 / 250 km on five surfaces, ten years old, averagely kept, at its rating.
    const result = ratesOf({
      tables,
      vehicle: {
        features: new Set(),
        ageYears: 10,
        odometerKm: 150_000,
        batteryAgeYears: 5,
        care: 'average',
        lift: metres(0),
        tyreOversize: 0,
        addedCircuits: 0,
        recentWork: [],
        weakPoints: [],
      },
      legs: [
        leg(1200, 'sealed'),
        leg(1000, 'gravel'),
        leg(700, 'corrugated'),
        leg(50, 'rock'),
        leg(250, 'sand'),
      ],
      trip: {
        days: 0,
        campNights: 0,
        driver: 'average',
        load: { front: 1, rear: 1, gross: 1 },
        roofOverloaded: false,
      },
    });
    const tyre = result.groups.find((g) => g.group === 'tyre');
    expect(tyre?.events).toBeCloseTo(0.33, 2);
    expect(result.events - (tyre?.events ?? 0)).toBeCloseTo(0.26, 2);
    expect(chanceOfAny(result.immobilising - (tyre?.immobilising ?? 0))).toBeCloseTo(0.13, 2);
    expect(result.immobilising).toBeCloseTo(0.44, 2);
    // Every factor stands at 1 here, so none is worth showing.
    expect(result.failures.flatMap((f) => f.parts.flatMap((p) => p.factors))).toEqual([]);
  });
});
