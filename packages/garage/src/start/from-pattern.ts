import type { PatternBerth, VehiclePattern } from '@waymend/catalogue/shape/pattern';
import { idFromContent } from '../import/import-into.ts';
import type { Garage } from '../record/schema.ts';
import { berth, leg, load, person, trip, vehicle } from '../record/schema.ts';
import { FIRST_LEG, FIRST_STAY } from './first-guess.ts';

/** What the new things are called, in the owner's language. */
export interface StartNames {
  readonly vehicle: string;
  readonly person: string;
  readonly trip: string;
  readonly leg: string;
  readonly nose: string;
}

/** A careful owner: changes a wheel, fuses and belts. */
const FIRST_SKILL = 2;

export interface Started {
  readonly garage: Garage;
  /** The vehicle or trailer that was added. */
  readonly vehicle: string;
  /** The trip that was made for it; null for a trailer that nothing tows yet. */
  readonly trip: string | null;
}

/**
 * A new garage with a vehicle of this pattern: its masses and ratings (marked as assumed), berths and features; fittings
 * stay the pattern's own until somebody looks. A vehicle gets a trip of one leg to adjust, with the people there are or
 * one new person in its front seats, and tows the first trailer that no trip tows. A trailer is hitched to the trip
 * `hitchTo`. Nothing that is there is changed otherwise.
 */
export function startFromPattern(
  garage: Garage,
  pattern: VehiclePattern,
  names: StartNames,
  hitchTo: string | null = null,
): Started {
  const id = idFromContent(pattern.id, (taken) => Object.hasOwn(garage.vehicles, taken));
  const { berths, berthIds } = withBerths(garage, id, pattern.berths);
  const grown: Garage = {
    ...garage,
    vehicles: { ...garage.vehicles, [id]: vehicleOf(pattern, names.vehicle) },
    berths,
  };
  if (pattern.kind === 'trailer') {
    if (hitchTo === null || grown.trips[hitchTo] === undefined)
      return { garage: grown, vehicle: id, trip: null };
    return { garage: hitch(grown, hitchTo, id, names.nose), vehicle: id, trip: hitchTo };
  }
  const { people, aboard } = withPeople(grown, names.person, berthIds.get('front-seats'));
  const kitBerth = berthIds.get(kitBerthOf(pattern.berths)?.id ?? '');
  const tripId = idFromContent(names.trip, (taken) => Object.hasOwn(garage.trips, taken));
  const legId = idFromContent(`${tripId}-1`, (taken) => Object.hasOwn(garage.legs, taken));
  const made: Garage = {
    ...grown,
    people,
    trips: {
      ...grown.trips,
      [tripId]: trip.parse({
        name: names.trip,
        vehicle: id,
        people: aboard,
        ...FIRST_STAY,
        ...(kitBerth === undefined ? {} : { kitBerth }),
      }),
    },
    legs: {
      ...grown.legs,
      [legId]: leg.parse({ trip: tripId, order: 1, name: names.leg, ...FIRST_LEG }),
    },
  };
  const waiting = trailerNobodyTows(garage);
  return {
    garage: waiting === null ? made : hitch(made, tripId, waiting, names.nose),
    vehicle: id,
    trip: tripId,
  };
}

function vehicleOf(pattern: VehiclePattern, name: string): Garage['vehicles'][string] {
  const { id, kind, features, wheelbaseMm, emptyFrontKg, emptyRearKg } = pattern;
  const { ratedFrontKg, ratedRearKg, ratedGrossKg, ratedRoofKg, tyre, wheelMassKg } = pattern;
  return vehicle.parse({
    name,
    pattern: id,
    kind,
    features,
    wheelbaseMm,
    emptyFrontKg,
    emptyRearKg,
    ratedFrontKg,
    ratedRearKg,
    ratedGrossKg,
    ratedRoofKg,
    ratingsAssumed: true,
    tyre: { loadIndex: tyre.loadIndex, passenger: tyre.passenger ?? false },
    wheelMassKg,
  });
}

function withBerths(
  garage: Garage,
  vehicleId: string,
  from: readonly PatternBerth[],
): { readonly berths: Garage['berths']; readonly berthIds: ReadonlyMap<string, string> } {
  const berths = { ...garage.berths };
  const berthIds = new Map<string, string>();
  for (const { id, name, xMm, limitKg, roof } of from) {
    const own = idFromContent(id, (taken) => Object.hasOwn(berths, taken));
    berths[own] = berth.parse({ vehicle: vehicleId, name, xMm, limitKg, roof: roof ?? false });
    berthIds.set(id, own);
  }
  return { berths, berthIds };
}

/** The roomiest berth that is neither a seat nor the roof. */
function kitBerthOf(berths: readonly PatternBerth[]): PatternBerth | undefined {
  return berths
    .filter(({ id, roof }) => roof !== true && !id.endsWith('seats'))
    .reduce<PatternBerth | undefined>(
      (best, one) => (best === undefined || one.limitKg > best.limitKg ? one : best),
      undefined,
    );
}

function withPeople(
  garage: Garage,
  name: string,
  seat: string | undefined,
): { readonly people: Garage['people']; readonly aboard: readonly string[] } {
  const there = Object.keys(garage.people);
  if (there.length > 0) return { people: garage.people, aboard: there };
  const id = idFromContent(name, () => false);
  const first = person.parse({ name, skill: FIRST_SKILL, ...(seat === undefined ? {} : { berth: seat }) });
  return { people: { [id]: first }, aboard: [id] };
}

function trailerNobodyTows({ vehicles, trips }: Garage): string | null {
  const towed = new Set(Object.values(trips).map(({ trailer }) => trailer));
  const found = Object.entries(vehicles).find(([id, { kind }]) => kind === 'trailer' && !towed.has(id));
  return found?.[0] ?? null;
}

/** Behind the trip's vehicle: its fittings come along, its nose mass is a load (M13). */
function hitch(garage: Garage, tripId: string, trailer: string, noseName: string): Garage {
  const before = garage.trips[tripId];
  const towed = garage.vehicles[trailer];
  if (before === undefined || towed === undefined) return garage;
  const nose = idFromContent(`${trailer}-nose`, (taken) => Object.hasOwn(garage.loads, taken));
  return {
    ...garage,
    loads: {
      ...garage.loads,
      [nose]: load.parse({ name: noseName, kg: towed.emptyFrontKg, kind: 'trailer-nose' }),
    },
    trips: { ...garage.trips, [tripId]: { ...before, trailer, loads: [...before.loads, nose] } },
  };
}
