import type { RateInput, RateLeg, TripFacts, VehicleFacts } from '../../src/failing/rate-input.ts';
import type { RateResult } from '../../src/failing/rate-result.ts';
import type { Surface } from '../../src/failing/rate-tables.ts';
import { ratesOf } from '../../src/failing/rates.ts';
import { metres } from '../../src/quantity/units.ts';
import { TABLES } from './trade-tables.ts';

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

export function leg(km: number, surface: Surface, more: Partial<RateLeg> = {}): RateLeg {
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

export function input(change: {
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

export const group = (result: RateResult, id: string) =>
  result.groups.find((g) => g.group === id)?.events ?? Number.NaN;
export const failure = (result: RateResult, id: string) => result.failures.find((f) => f.failure === id);
/** How many times more often a group fails with a change than without. */
export function times(id: string, change: Parameters<typeof input>[0]): number {
  const legs = change.legs ?? [leg(1000, 'corrugated')];
  const plain = legs.map((l) => leg(l.distance / 1000, l.surface));
  return group(ratesOf(input(change)), id) / group(ratesOf(input({ legs: plain })), id);
}

export const JOURNEY = [
  leg(1200, 'sealed'),
  leg(1000, 'gravel'),
  leg(700, 'corrugated'),
  leg(50, 'rock'),
  leg(250, 'sand'),
];
