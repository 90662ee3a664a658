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
    fixed: [...peopleAboard(garage, trip), ...otherLoads(garage, trip)],
    kit: kit.map((p): KitLoad => ({ id: p.id, grams: p.grams, berth: p.berth })),
    ...(trip.kitBerth === undefined ? {} : { kitBerth: trip.kitBerth }),
  };
}

/** A lump of kit where the kit rides, for the load the rates are computed at (M1). */
export function lump(grossGrams: number): KitLoad {
  return { id: 'the kit', grams: grams(Math.round(grossGrams)), berth: null };
}

function peopleAboard(garage: Garage, trip: Trip): FixedLoad[] {
  return trip.people.flatMap((id) => {
    const person = garage.people[id];
    if (person === undefined) return [];
    const berth = person.berth === undefined ? {} : { berth: person.berth };
    return [{ id, name: person.name, mass: kilograms(person.massKg), kind: 'person' as const, ...berth }];
  });
}

function otherLoads(garage: Garage, trip: Trip): FixedLoad[] {
  return trip.loads.flatMap((id) => {
    const load = garage.loads[id];
    if (load === undefined) return [];
    const kind = load.kind === 'trailer-nose' ? ('trailer-nose' as const) : ('cargo' as const);
    const berth = load.berth === undefined ? {} : { berth: load.berth };
    const x = load.xMm === undefined ? {} : { x: millimetres(load.xMm) };
    return [{ id, name: load.name, mass: kilograms(load.kg), kind, ...berth, ...x }];
  });
}
