import type { VehiclePattern } from '@waymend/catalogue/shape/pattern';
import type { Place } from '@waymend/catalogue/shape/place';
import type { Feature } from '@waymend/catalogue/shape/words';
import type { Joint } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage, Trip, Vehicle } from '@waymend/garage/record/schema';
import { jointsOf } from './joints.ts';

/** What a vehicle tows on a trip. */
export interface Towed {
  readonly id: string;
  readonly trailer: Vehicle;
  readonly pattern: VehiclePattern | null;
}

/** Features that say only that something is towed. */
const TOWING: readonly Feature[] = ['trailer', 'camper-trailer'];

export function towedOn(garage: Garage, trip: Trip, patterns: readonly VehiclePattern[]): Towed | null {
  const trailer = trip.trailer === undefined ? undefined : garage.vehicles[trip.trailer];
  if (trip.trailer === undefined || trailer === undefined) return null;
  return { id: trip.trailer, trailer, pattern: patterns.find((p) => p.id === trailer.pattern) ?? null };
}

/** What a vehicle or trailer has: the owner's list, or its pattern's. */
export function featuresOf(vehicle: Vehicle, pattern: VehiclePattern | null): readonly Feature[] {
  return vehicle.features.length > 0 ? vehicle.features : (pattern?.features ?? []);
}

/**
 * The joints of a vehicle and what it tows. A place that both have is the vehicle's, and the trailer's too only where its owner
 * has recorded it there: then it is a position of its own. Nothing is assumed twice.
 */
export function jointsWithTowed(
  garage: Garage,
  id: string,
  vehicle: Vehicle,
  pattern: VehiclePattern | null,
  towed: Towed | null,
  places: readonly Place[],
): Result<readonly Joint[]> {
  const features = new Set(featuresOf(vehicle, pattern));
  if (towed === null) return jointsOf(garage, id, vehicle, features, places, pattern);
  for (const word of TOWING) features.delete(word);
  const own = jointsOf(garage, id, vehicle, features, places, pattern);
  if (!own.ok) return own;
  const hitched = new Set(featuresOf(towed.trailer, towed.pattern));
  const theirs = jointsOf(garage, towed.id, towed.trailer, hitched, places, towed.pattern);
  if (!theirs.ok) return theirs;
  const shared = new Set(own.value.map((j) => j.place));
  const more = theirs.value.flatMap((j): Joint[] => {
    if (!shared.has(j.place)) return [j];
    if (garage.fittings[j.id]?.vehicle !== towed.id) return [];
    const position = j.position === undefined ? 'trailer' : `trailer ${j.position}`;
    return [{ ...j, position, title: `${j.title}, trailer` }];
  });
  return ok([...own.value, ...more]);
}
