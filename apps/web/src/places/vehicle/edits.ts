import { removeEntity } from '@waymend/garage/remove';
import type { Fitting, Garage, Vehicle } from '@waymend/garage/record/schema';
import { onBuyingList } from '../../shell/buying-list.ts';
import type { Mover } from '@waymend/planner/views/load-moves';

/** Everything the Vehicle place changes in a record, each as a pure function from garage to garage. */

/** Puts a load, a belonging or the trip's kit into another berth. A distance of its own gives way to the berth's. */
export function moveTo(garage: Garage, trip: string, mover: Mover, berth: string): Garage {
  switch (mover.kind) {
    case 'ten':
      return garage;
    case 'kit': {
      const before = garage.trips[trip];
      if (before === undefined) return garage;
      return { ...garage, trips: { ...garage.trips, [trip]: { ...before, kitBerth: berth } } };
    }
    case 'load': {
      const before = garage.loads[mover.id];
      if (before === undefined) return garage;
      const { xMm: _, ...rest } = before;
      return { ...garage, loads: { ...garage.loads, [mover.id]: { ...rest, berth } } };
    }
    case 'belonging': {
      const before = garage.belongings[mover.id];
      if (before === undefined) return garage;
      return { ...garage, belongings: { ...garage.belongings, [mover.id]: { ...before, berth } } };
    }
  }
}

/** Changes fields of a vehicle; a field given as undefined is taken out of the record. */
export function changeVehicle(garage: Garage, id: string, fields: Loose<Vehicle>): Garage {
  const before = garage.vehicles[id];
  if (before === undefined) return garage;
  return { ...garage, vehicles: { ...garage.vehicles, [id]: merged(before, fields) } };
}

export type Berth = Garage['berths'][string];

export function putBerth(garage: Garage, id: string, berth: Berth): Garage {
  return { ...garage, berths: { ...garage.berths, [id]: berth } };
}

/** Changes fields of a berth; a field given as undefined is taken out of the record. */
export function changeBerth(garage: Garage, id: string, fields: Loose<Berth>): Garage {
  const before = garage.berths[id];
  return before === undefined ? garage : putBerth(garage, id, merged(before, fields));
}

/** Takes a berth out; what rode in it has none then, and nothing names it any more. */
export function removeBerth(garage: Garage, id: string): Garage {
  const removed = removeEntity(garage, 'berths', id);
  return removed.ok ? removed.value : garage;
}

/** Id under which a place of a vehicle is recorded for the first time: the same place gets the same id on every device. */
export function fittingId(garage: Garage, vehicle: string, place: string, position: string | null): string {
  const words = [place, ...(position === null ? [] : [position])].join('-').toLowerCase();
  const wish = words.replaceAll(/[^a-z0-9]+/g, '-').slice(0, 56);
  const taken = (id: string) => Object.hasOwn(garage.fittings, id);
  if (!taken(wish)) return wish;
  const ours = `${vehicle}-${wish}`.slice(0, 60);
  for (let n = 1; ; n += 1) {
    const id = n === 1 ? ours : `${ours}-${n}`;
    if (!taken(id)) return id;
  }
}

export function putFitting(garage: Garage, id: string, fitting: Fitting): Garage {
  return { ...garage, fittings: { ...garage.fittings, [id]: fitting } };
}

/** A place that is to be added to a vehicle, and those of it that are listed. */
export interface Added {
  readonly place: string;
  readonly position: string | null;
}

/** Adds a place as usual until somebody looks. One that stood for every position of it is recorded too: it would go otherwise. */
export function addPlace(
  garage: Garage,
  vehicle: string,
  { place, position }: Added,
  listed: readonly (Added & { readonly fitting: string | null })[],
): Garage {
  const put = (before: Garage, where: string | null) =>
    putFitting(before, fittingId(before, vehicle, place, where), {
      vehicle,
      place,
      ...(where === null ? {} : { position: where }),
      status: 'assumed',
      confirmed: false,
    });
  const forAll = listed.some((r) => r.place === place && r.position === null && r.fitting === null);
  return put(position !== null && forAll ? put(garage, null) : garage, position);
}

/** Takes the owner's word on a place out again: then it is assumed once more. */
export function removeFitting(garage: Garage, id: string): Garage {
  const { [id]: _, ...fittings } = garage.fittings;
  return { ...garage, fittings };
}

export type WeakPoint = Garage['weakPoints'][string];

export function putWeakPoint(garage: Garage, id: string, weak: WeakPoint): Garage {
  return { ...garage, weakPoints: { ...garage.weakPoints, [id]: weak } };
}

export function removeWeakPoint(garage: Garage, id: string): Garage {
  const { [id]: _, ...weakPoints } = garage.weakPoints;
  return { ...garage, weakPoints };
}

/** Fields that may also be taken out. */
export type Loose<T> = { readonly [K in keyof T]?: T[K] | undefined };

function merged<T extends object>(before: T, fields: Loose<T>): T {
  const out: T = { ...before };
  for (const [key, value] of Object.entries(fields)) {
    if (value === undefined) Reflect.deleteProperty(out, key);
    else Reflect.set(out, key, value);
  }
  return out;
}

interface Item {
  readonly id: string;
  readonly owned: boolean;
}

/** Marks pieces that stay home to come along always. A copy ('w17#2') is its belonging. */
export function alwaysBring(garage: Garage, items: readonly Item[]): Garage {
  const belongings = { ...garage.belongings };
  for (const { id } of items) {
    const own = id.split('#')[0] ?? id;
    const before = belongings[own];
    if (before !== undefined) belongings[own] = { ...before, pin: 'always' };
  }
  return { ...garage, belongings };
}

/**
 * Pins what is owned and puts the rest on the buying list; what the record has for sale is on it already. `cents` is the price of all
 * of it together, known when it is one thing.
 */
export function putOnBuyingList(garage: Garage, items: readonly Item[], cents: number | null): Garage {
  const pinned = alwaysBring(
    garage,
    items.filter(({ owned }) => owned),
  );
  const wanted = items.flatMap(({ id, owned }) =>
    !owned && id.startsWith(CATALOGUE) ? [id.slice(CATALOGUE.length)] : [],
  );
  return onBuyingList(
    pinned,
    wanted.map((is) => ({ is, cents: items.length === 1 ? cents : null })),
  );
}

/** The planner's mark of a piece that only the catalogue has. */
const CATALOGUE = 'buy:';
