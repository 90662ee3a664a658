import type { FixedLoad, KitLoad, LoadIndexRow, LoadInput } from '@waymend/core/loading/load-input';
import { grams, kilograms, millimetres } from '@waymend/core/quantity/units';
import type { ScenePiece } from '@waymend/core/repairing/scene';
import type { Garage, Trip, Vehicle } from '@waymend/garage/record/schema';

/** Everything that rides, as the load rules want it (M13): people and loads are counted, the kit is what is asked about. */
export function loadInput(
  garage: Garage,
  trip: Trip,
  vehicle: Vehicle,
  kit: readonly Pick<ScenePiece, 'id' | 'grams' | 'berth'>[],
  loadIndexTable: readonly LoadIndexRow[],
): LoadInput {
  const here = berthHere(garage, trip);
  const berths = Object.entries(garage.berths)
    .filter(([, b]) => b.vehicle === trip.vehicle)
    .map(([id, b]) => ({
      id,
      name: b.name,
      x: millimetres(b.xMm),
      roof: b.roof,
      ...(b.limitKg === undefined ? {} : { limit: kilograms(b.limitKg) }),
    }));
  return {
    wheelbase: millimetres(vehicle.wheelbaseMm),
    emptyFront: kilograms(vehicle.emptyFrontKg),
    emptyRear: kilograms(vehicle.emptyRearKg),
    ratedFront: kilograms(vehicle.ratedFrontKg),
    ratedRear: kilograms(vehicle.ratedRearKg),
    ratedGross: kilograms(vehicle.ratedGrossKg),
    ...(vehicle.ratedRoofKg === undefined ? {} : { ratedRoof: kilograms(vehicle.ratedRoofKg) }),
    ...(vehicle.tyre === undefined
      ? {}
      : { tyre: { loadIndex: vehicle.tyre.loadIndex, passenger: vehicle.tyre.passenger } }),
    loadIndexTable,
    berths,
    fixed: [...peopleAboard(garage, trip, here), ...otherLoads(garage, trip, here)],
    kit: kit.map((p): KitLoad => ({ id: p.id, grams: p.grams, berth: p.berth })),
    ...(trip.kitBerth === undefined ? {} : { kitBerth: trip.kitBerth }),
  };
}

/** A lump of kit where the kit rides, for the load the rates are computed at (M1). */
export function lump(grossGrams: number): KitLoad {
  return { id: 'the kit', grams: grams(Math.round(grossGrams)), berth: null };
}

type Here = (berth: string | undefined) => string | undefined;

/**
 * The berth, unless it is one of a vehicle that stays at home: who or what rides there on other trips then rides where such
 * things usually do. A berth nobody knows, or one of the trailer, is passed on and refused by the load rules.
 */
function berthHere(garage: Garage, trip: Trip): Here {
  return (berth) => {
    if (berth === undefined) return undefined;
    const vehicle = garage.berths[berth]?.vehicle;
    const stays = vehicle !== undefined && vehicle !== trip.vehicle && vehicle !== trip.trailer;
    return stays ? undefined : berth;
  };
}

function peopleAboard(garage: Garage, trip: Trip, here: Here): FixedLoad[] {
  return trip.people.flatMap((id) => {
    const person = garage.people[id];
    if (person === undefined) return [];
    const seat = here(person.berth);
    const berth = seat === undefined ? {} : { berth: seat };
    return [{ id, name: person.name, mass: kilograms(person.massKg), kind: 'person' as const, ...berth }];
  });
}

function otherLoads(garage: Garage, trip: Trip, here: Here): FixedLoad[] {
  return trip.loads.flatMap((id) => {
    const load = garage.loads[id];
    if (load === undefined) return [];
    const kind = load.kind === 'trailer-nose' ? ('trailer-nose' as const) : ('cargo' as const);
    const place = here(load.berth);
    const berth = place === undefined ? {} : { berth: place };
    const x = load.xMm === undefined ? {} : { x: millimetres(load.xMm) };
    return [{ id, name: load.name, mass: kilograms(load.kg), kind, ...berth, ...x }];
  });
}
