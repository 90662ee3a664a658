import { removeEntity } from '@waymend/garage/remove';
import type { Garage, Leg, Trip } from '@waymend/garage/record/schema';

/** Pure changes of a garage's trips, legs and loads; each screen act is one of these and one step of undo. */

export type Load = Garage['loads'][string];

/** What a new leg is like where nothing is said. */
export const PLAIN_LEG = {
  stones: 'none',
  dusty: false,
  doubtfulFills: 0,
  resonancePace: false,
  winterFuel: false,
  softTyres: false,
} as const satisfies Partial<Leg>;

/** Legs of a trip in the order they are driven. */
export function legsOf(garage: Garage, tripId: string): readonly (readonly [string, Leg])[] {
  return Object.entries(garage.legs)
    .filter(([, { trip }]) => trip === tripId)
    .sort(([a, x], [b, y]) => x.order - y.order || (a < b ? -1 : 1));
}

export function changeTrip(garage: Garage, id: string, fields: Partial<Trip>): Garage {
  const before = garage.trips[id];
  if (before === undefined) return garage;
  return { ...garage, trips: { ...garage.trips, [id]: without({ ...before, ...fields }) } };
}

/**
 * The same trip with another vehicle: what rides in berths of the old one has no berth there, so the kit's berth and the
 * trailer go, and loads lose their berth unless another trip still carries them in it.
 */
export function changeVehicle(garage: Garage, id: string, vehicle: string): Garage {
  const trip = garage.trips[id];
  if (trip === undefined || trip.vehicle === vehicle) return garage;
  const { kitBerth: _, trailer, ...rest } = trip;
  const kept = trailer !== undefined && trailer !== vehicle ? { trailer } : {};
  const shared = new Set(
    Object.entries(garage.trips).flatMap(([other, { loads }]) => (other === id ? [] : loads)),
  );
  const loads = Object.fromEntries(
    Object.entries(garage.loads).map(([key, load]) => {
      if (!trip.loads.includes(key) || shared.has(key)) return [key, load];
      const { berth: _berth, xMm: _x, ...free } = load;
      return [key, free];
    }),
  );
  return { ...garage, loads, trips: { ...garage.trips, [id]: { ...rest, ...kept, vehicle } } };
}

export interface NewTripIds {
  readonly trip: string;
  readonly leg: (n: number) => string;
}

/** A trip with one leg, for the vehicle and people of `like`. */
export function newTrip(
  garage: Garage,
  ids: NewTripIds,
  like: Pick<Trip, 'vehicle' | 'people'>,
  name: string,
  leg: Omit<Leg, 'trip' | 'order'>,
): Garage {
  const trip: Trip = {
    name,
    vehicle: like.vehicle,
    people: [...like.people],
    loads: [],
    days: 3,
    campNights: 2,
    driver: 'average',
    budget: 0,
    buyFrom: 'catalogue',
    mustDo: [],
  };
  return {
    ...garage,
    trips: { ...garage.trips, [ids.trip]: trip },
    legs: { ...garage.legs, [ids.leg(1)]: { ...leg, trip: ids.trip, order: 1 } },
  };
}

/** The whole trip again under another name; loads and people are the same ones. */
export function copyTrip(garage: Garage, from: string, ids: NewTripIds, name: string): Garage {
  const trip = garage.trips[from];
  if (trip === undefined) return garage;
  const legs = legsOf(garage, from).map(
    ([, leg], n) => [ids.leg(n + 1), { ...leg, trip: ids.trip }] as const,
  );
  return {
    ...garage,
    trips: { ...garage.trips, [ids.trip]: { ...trip, name } },
    legs: { ...garage.legs, ...Object.fromEntries(legs) },
  };
}

/** Without the trip, its legs and what was noted of it; loads that no other trip carries go with it. */
export function removeTrip(garage: Garage, id: string): Garage {
  const removed = removeEntity(garage, 'trips', id);
  if (!removed.ok) return garage;
  const carried = new Set(Object.values(removed.value.trips).flatMap(({ loads }) => loads));
  const own = garage.trips[id]?.loads ?? [];
  return {
    ...removed.value,
    loads: Object.fromEntries(
      Object.entries(garage.loads).filter(([key]) => !own.includes(key) || carried.has(key)),
    ),
  };
}

/** A leg after the last one, like it in surface and remoteness. */
export function addLeg(garage: Garage, tripId: string, id: string, leg: Omit<Leg, 'trip' | 'order'>): Garage {
  const last = legsOf(garage, tripId).at(-1)?.[1];
  const order = (last?.order ?? 0) + 1;
  return { ...garage, legs: { ...garage.legs, [id]: { ...leg, trip: tripId, order } } };
}

export function changeLeg(garage: Garage, id: string, fields: Partial<Leg>): Garage {
  const before = garage.legs[id];
  if (before === undefined) return garage;
  return { ...garage, legs: { ...garage.legs, [id]: without({ ...before, ...fields }) } };
}

export function removeLeg(garage: Garage, id: string): Garage {
  return { ...garage, legs: omit(garage.legs, id) };
}

/** The leg one place earlier (-1) or later (1); the order is counted anew from 1. */
export function moveLeg(garage: Garage, id: string, by: -1 | 1): Garage {
  const leg = garage.legs[id];
  if (leg === undefined) return garage;
  const ids = legsOf(garage, leg.trip).map(([key]) => key);
  const from = ids.indexOf(id);
  const to = from + by;
  const other = ids[to];
  if (other === undefined) return garage;
  ids[from] = other;
  ids[to] = id;
  const legs = { ...garage.legs };
  ids.forEach((key, n) => {
    const one = legs[key];
    if (one !== undefined) legs[key] = { ...one, order: n + 1 };
  });
  return { ...garage, legs };
}

/** A load that comes along on this trip. */
export function addLoad(garage: Garage, tripId: string, id: string, load: Load): Garage {
  const trip = garage.trips[tripId];
  if (trip === undefined) return garage;
  return {
    ...garage,
    loads: { ...garage.loads, [id]: load },
    trips: { ...garage.trips, [tripId]: { ...trip, loads: [...trip.loads, id] } },
  };
}

export function changeLoad(garage: Garage, id: string, fields: Partial<Load>): Garage {
  const before = garage.loads[id];
  if (before === undefined) return garage;
  // A berth says where it rides; an old distance must not say something else.
  const { xMm, ...rest } = before;
  const kept = 'berth' in fields || xMm === undefined ? rest : { ...rest, xMm };
  return { ...garage, loads: { ...garage.loads, [id]: without({ ...kept, ...fields }) } };
}

/** Off this trip; off the record as well when no other trip carries it. */
export function removeLoad(garage: Garage, tripId: string, id: string): Garage {
  const trip = garage.trips[tripId];
  if (trip === undefined) return garage;
  const trips = { ...garage.trips, [tripId]: { ...trip, loads: trip.loads.filter((one) => one !== id) } };
  const carried = Object.values(trips).some(({ loads }) => loads.includes(id));
  return { ...garage, trips, loads: carried ? garage.loads : omit(garage.loads, id) };
}

/** Aboard or not; the last person stays, since somebody drives. */
export function seatPerson(garage: Garage, tripId: string, person: string, aboard: boolean): Garage {
  const trip = garage.trips[tripId];
  if (trip === undefined) return garage;
  const others = trip.people.filter((one) => one !== person);
  if (!aboard && others.length === 0) return garage;
  return changeTrip(garage, tripId, { people: aboard ? [...others, person] : others });
}

function omit<T>(table: Readonly<Record<string, T>>, id: string): Record<string, T> {
  return Object.fromEntries(Object.entries(table).filter(([key]) => key !== id));
}

/** A field set to undefined is a field that is not there. */
function without<T extends object>(record: T): T;
function without(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}
