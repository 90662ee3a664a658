import type { Feature, Surface } from '@waymend/catalogue/shape/words';
import { SURFACES } from '@waymend/catalogue/shape/words';
import type { LearnedRate } from '@waymend/core/failing/learning';
import { learnedRate } from '@waymend/core/failing/learning';
import type { RateInput } from '@waymend/core/failing/rate-input';
import { ratesOf } from '@waymend/core/failing/rates';
import { metres } from '@waymend/core/quantity/units';
import type { Garage, Vehicle } from '@waymend/garage/record/schema';
import { odometerOf, travelledKm } from '@waymend/garage/road/odometer';
import type { Trade } from '../trade.ts';
import { factsOf } from './rate-input.ts';
import { grouped } from '../words/chance.ts';

/** What a vehicle's own log says about its rates (M1, M11). */
export interface OwnLog {
  /** Distance that the log covers, km, by surface; null when the record says of none. */
  readonly km: Readonly<Record<Surface, number>> | null;
  /** Every failure group, in the order of the catalogue. Empty while nothing is learned. */
  readonly learned: readonly LearnedRate[];
  /** Breakdowns outside the distance covered; they teach nothing. */
  readonly outside: number;
}

interface Covered {
  readonly km: Readonly<Record<Surface, number>>;
  readonly counts: (breakdown: Garage['breakdowns'][string]) => boolean;
}

/**
 * What is learned from the breakdowns of one vehicle. Without a breakdown nothing is: who writes none down may still have
 * had some. Nor is anything without a distance, which odometer readings give, or else the trips that were driven.
 */
export function ownLog(
  garage: Garage,
  vehicleId: string,
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
  trade: Trade,
): OwnLog {
  const mine = Object.values(garage.breakdowns).filter((b) => b.vehicle === vehicleId);
  const covered = mine.length === 0 ? null : coveredBy(garage, vehicleId);
  if (covered === null) return { km: null, learned: [], outside: mine.length };
  const counted = mine.filter(covered.counts);
  if (counted.length === 0) return { km: covered.km, learned: [], outside: mine.length };
  const groupOf = new Map(trade.failures.map((f) => [f.id, f.group]));
  const expected = ratesOf(experienceInput(vehicle, features, trade, covered.km)).groups;
  const learned = trade.groups.map((group) =>
    learnedRate({
      group: group.id,
      title: group.title,
      shape: group.gammaShape,
      expected: expected.find((e) => e.group === group.id)?.events ?? 0,
      events: counted.filter((b) => groupOf.get(b.failure) === group.id).length,
    }),
  );
  return { km: covered.km, learned, outside: mine.length - counted.length };
}

/** The factors on the plain rates, as the rate rules take them. */
export function learnedFactors(
  garage: Garage,
  vehicleId: string,
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
  trade: Trade,
): NonNullable<RateInput['vehicle']['learned']> {
  const { km, learned } = ownLog(garage, vehicleId, vehicle, features, trade);
  const far = grouped(Math.round(Object.values(km ?? {}).reduce((sum, one) => sum + one, 0)));
  return learned.map(({ group, events, expected, posterior }) => ({
    group,
    title: `Own log: ${events} in ${far} km, where ${Number(expected.toPrecision(2))} were expected`,
    factor: posterior.mean,
  }));
}

/** From the first odometer reading to the last figure seen; without one, the trips that were driven. */
function coveredBy(garage: Garage, vehicle: string): Covered | null {
  const first = Object.values(garage.readings)
    .filter((r) => r.vehicle === vehicle)
    .map(({ km, on, oldKm }) => travelledKm(garage, vehicle, oldKm ?? km, on))
    .reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const last = odometerOf(garage, vehicle).at(-1)?.travelledKm ?? 0;
  const driven = drivenTrips(garage, vehicle);
  const onTrips = surfaces((surface) =>
    Object.values(garage.legs).reduce(
      (sum, leg) => (driven.has(leg.trip) && leg.surface === surface ? sum + leg.km : sum),
      0,
    ),
  );
  const tripKm = SURFACES.reduce((sum, surface) => sum + onTrips[surface], 0);
  const read = last - first;
  if (read > 0) {
    const share = tripKm > read ? read / tripKm : 1;
    // What no trip accounts for was driven on everyday roads.
    const rest = Math.max(0, read - tripKm);
    return {
      km: surfaces((surface) => onTrips[surface] * share + (surface === 'sealed' ? rest : 0)),
      counts: ({ atKm, on }) => travelledKm(garage, vehicle, atKm, on) >= first,
    };
  }
  if (tripKm > 0) return { km: onTrips, counts: ({ trip }) => trip !== undefined && driven.has(trip) };
  return null;
}

/** Trips that something was noted of on the road: a breakdown, a closed muster, what was used. */
function drivenTrips(garage: Garage, vehicle: string): ReadonlySet<string> {
  const named = [
    ...Object.values(garage.breakdowns).map(({ trip }) => trip),
    ...Object.values(garage.musters).map(({ trip, closedOn }) => (closedOn === undefined ? undefined : trip)),
    ...Object.values(garage.uses).map(({ trip }) => trip),
  ];
  return new Set(
    named.flatMap((id) => (id !== undefined && garage.trips[id]?.vehicle === vehicle ? [id] : [])),
  );
}

function surfaces(value: (surface: Surface) => number): Readonly<Record<Surface, number>> {
  return {
    sealed: value('sealed'),
    gravel: value('gravel'),
    corrugated: value('corrugated'),
    rock: value('rock'),
    sand: value('sand'),
  };
}

/** The distances as a drive without anything special: an average driver within the ratings, no heat, no fords. */
function experienceInput(
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
  trade: Trade,
  km: Readonly<Record<Surface, number>>,
): RateInput {
  return {
    tables: { groups: trade.groups, failures: trade.failures, factors: trade.factors },
    vehicle: {
      ...factsOf(vehicle, features),
      recentWork: [],
      weakPoints: [],
    },
    legs: SURFACES.map((surface) => ({
      id: surface,
      distance: metres(km[surface] * 1000),
      surface,
      help: metres(0),
      stones: 'none',
      dusty: false,
      doubtfulFills: 0,
      resonancePace: false,
      crossings: {},
    })),
    trip: {
      days: 0,
      campNights: 0,
      driver: 'average',
      load: { front: 1, rear: 1, gross: 1 },
      roofOverloaded: false,
    },
  };
}
