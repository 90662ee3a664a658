import type { Garage, Trip } from '@waymend/garage/record/schema';

/** Changes of the record that the kit screens make; each is one step of undo. */

/** The trip's limits; null takes one away, what is absent stays. */
export interface Limits {
  readonly grams?: number | null;
  readonly litres?: number | null;
  readonly budget?: number;
  readonly buyFrom?: Trip['buyFrom'];
}

export function withLimit(garage: Garage, tripId: string, limits: Limits): Garage {
  return changeTrip(garage, tripId, (trip) => {
    const { limitKg, limitLitres, ...rest } = trip;
    const kg = limits.grams === undefined ? limitKg : limits.grams === null ? undefined : limits.grams / 1000;
    const litres = limits.litres === undefined ? limitLitres : (limits.litres ?? undefined);
    return {
      ...rest,
      ...(kg === undefined ? {} : { limitKg: kg }),
      ...(litres === undefined ? {} : { limitLitres: litres }),
      budget: limits.budget ?? trip.budget,
      buyFrom: limits.buyFrom ?? trip.buyFrom,
    };
  });
}

/** A job that the kit has to make possible, or no longer; `job` is the catalogue's. */
export function withMustDo(garage: Garage, tripId: string, job: string, must: boolean): Garage {
  return changeTrip(garage, tripId, (trip) => ({
    ...trip,
    mustDo: [...trip.mustDo.filter((one) => one !== job), ...(must ? [job] : [])],
  }));
}

/** The owner's own mark on belongings; copies of one belonging ('id#2') share it. What the garage does not hold is left out. */
export function withPin(garage: Garage, ids: readonly string[], pin: 'always' | 'never' | null): Garage {
  return changeBelongings(garage, ids, ({ pin: _, ...belonging }) =>
    pin === null ? belonging : { ...belonging, pin },
  );
}

/** What was flat, expired, damaged or lent has been put right. */
export function asReady(garage: Garage, ids: readonly string[]): Garage {
  return changeBelongings(garage, ids, (belonging) => ({ ...belonging, state: 'ready' }));
}

/** What was for sale has been bought, a set with all that is in it. The price stays with it. */
export function asBought(garage: Garage, id: string): Garage {
  return changeBelongings(garage, withContents(garage, id), (belonging) => ({
    ...belonging,
    forSale: false,
  }));
}

/** Takes a belonging off the list, a set with all that is in it. */
export function offShopList(garage: Garage, id: string): Garage {
  const gone = new Set(withContents(garage, id));
  const belongings = Object.fromEntries(Object.entries(garage.belongings).filter(([one]) => !gone.has(one)));
  return { ...garage, belongings };
}

function withContents(garage: Garage, id: string): readonly string[] {
  return [id, ...Object.entries(garage.belongings).flatMap(([one, b]) => (b.inside === id ? [one] : []))];
}

/** A part renewed before leaving makes its failure rarer: the owner's own factor on that rate says so. */
export function asRenewed(
  garage: Garage,
  vehicle: string,
  failure: string,
  { what, rateFactor }: { readonly what: string; readonly rateFactor: number },
): Garage {
  return {
    ...garage,
    weakPoints: {
      ...garage.weakPoints,
      [renewalId(vehicle, failure)]: { vehicle, failure, factor: rateFactor, note: what },
    },
  };
}

export function notRenewed(garage: Garage, id: string): Garage {
  const { [id]: _, ...weakPoints } = garage.weakPoints;
  return { ...garage, weakPoints };
}

/** The record's own name of a renewal; ids are at most 64 characters of a to z, 0 to 9 and hyphens. */
export function renewalId(vehicle: string, failure: string): string {
  return `renewed-${failure}-${vehicle}`.replace(/[^a-z0-9-]/g, '-').slice(0, 64);
}

/** 'id#2' is the second copy of 'id'; 'ready:id' is the same belonging once it is put right. */
export function belongingOf(piece: string): string {
  return piece.replace(/^ready:/, '').replace(/#\d+$/, '');
}

function changeTrip(garage: Garage, tripId: string, change: (trip: Trip) => Trip): Garage {
  const trip = garage.trips[tripId];
  return trip === undefined ? garage : { ...garage, trips: { ...garage.trips, [tripId]: change(trip) } };
}

function changeBelongings(
  garage: Garage,
  ids: readonly string[],
  change: (belonging: Garage['belongings'][string]) => Garage['belongings'][string],
): Garage {
  const belongings = { ...garage.belongings };
  for (const id of new Set(ids.map(belongingOf))) {
    const belonging = belongings[id];
    if (belonging !== undefined) belongings[id] = change(belonging);
  }
  return { ...garage, belongings };
}
