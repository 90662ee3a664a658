import type { Refusal } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import type { PlaceInFile } from './place-in-file.ts';

/** What is still missing before anything can be planned: a vehicle, a trip, a route longer than nothing. */
export function missingForPlanning(garage: Garage, at: PlaceInFile): readonly Refusal[] {
  const refusals: Refusal[] = [];
  const vehicles = Object.values(garage.vehicles).filter(({ kind }) => kind === 'vehicle');
  if (vehicles.length === 0) {
    refusals.push(
      at.refusal(
        'vehicle-none',
        ['vehicles'],
        'there is no vehicle; add one under vehicles, with its wheelbase and masses',
      ),
    );
  }
  if (Object.keys(garage.trips).length === 0) {
    refusals.push(
      at.refusal(
        'trip-none',
        ['trips'],
        'there is no trip; add one under trips, with its vehicle, people and legs',
      ),
    );
  }
  for (const id of Object.keys(garage.trips)) {
    const legs = Object.values(garage.legs).filter(({ trip }) => trip === id);
    const km = legs.reduce((sum, leg) => sum + leg.km, 0);
    if (km > 0 || legs.some((leg) => leg.km < 0)) continue;
    refusals.push(
      at.refusal(
        'route-zero',
        ['trips', id],
        legs.length === 0
          ? `trip ${id} has no legs, so its route is 0 km; add one under legs with "trip: ${id}" and its km`
          : `the route of trip ${id} is 0 km; give its legs their km`,
      ),
    );
  }
  return refusals;
}
