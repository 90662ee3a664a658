import type { VehiclePattern } from '@waymend/catalogue/shape/pattern';
import { idFromContent } from '../import/import-into.ts';
import type { Garage, Vehicle } from '../record/schema.ts';
import { berth, vehicle } from '../record/schema.ts';

/** A vehicle of a pattern to start a record from, with its berths: everything in it is typical and nothing is measured. */
export function addFromPattern(
  garage: Garage,
  pattern: VehiclePattern,
  name: string,
): { readonly garage: Garage; readonly id: string } {
  const id = idFromContent(name, (candidate) => Object.hasOwn(garage.vehicles, candidate));
  const { tyre, wheelMassKg } = pattern;
  const added: Vehicle = vehicle.parse({
    name: name.slice(0, 200),
    pattern: pattern.id,
    kind: pattern.kind,
    features: [...pattern.features],
    wheelbaseMm: pattern.wheelbaseMm,
    emptyFrontKg: pattern.emptyFrontKg,
    emptyRearKg: pattern.emptyRearKg,
    ratedFrontKg: pattern.ratedFrontKg,
    ratedRearKg: pattern.ratedRearKg,
    ratedGrossKg: pattern.ratedGrossKg,
    ratedRoofKg: pattern.ratedRoofKg,
    tyre: { loadIndex: tyre.loadIndex, passenger: tyre.passenger ?? false },
    wheelMassKg,
  });
  const berths = { ...garage.berths };
  for (const { id: spot, ...rest } of pattern.berths)
    berths[idFromContent(spot, (candidate) => Object.hasOwn(berths, candidate))] = berth.parse({
      vehicle: id,
      ...rest,
    });
  return { garage: { ...garage, vehicles: { ...garage.vehicles, [id]: added }, berths }, id };
}
