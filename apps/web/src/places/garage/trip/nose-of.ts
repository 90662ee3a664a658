import type { Garage, Trip } from '@waymend/garage/record/schema';

/** How the trailer's nose stands among the loads of a trip. */
export type Nose =
  | { readonly kind: 'right' }
  | {
      readonly kind: 'missing';
      /** Of the trailer. */
      readonly name: string;
      /** What it presses on the hitch empty, as recorded. */
      readonly kg: number;
      /** Nobody has weighed it. */
      readonly isAssumed: boolean;
    }
  | { readonly kind: 'left-over'; readonly loads: readonly string[]; readonly kg: number };

/** A trailer record's front "axle" is its coupling, see shape/pattern.ts of the catalogue (M13). */
export function noseOf(garage: Pick<Garage, 'vehicles' | 'loads'>, trip: Trip): Nose {
  const noses = trip.loads.filter((id) => garage.loads[id]?.kind === 'trailer-nose');
  const trailer = trip.trailer === undefined ? undefined : garage.vehicles[trip.trailer];
  if (trailer === undefined) {
    if (noses.length === 0) return { kind: 'right' };
    const kg = noses.reduce((sum, id) => sum + (garage.loads[id]?.kg ?? 0), 0);
    return { kind: 'left-over', loads: noses, kg };
  }
  if (noses.length > 0) return { kind: 'right' };
  return { kind: 'missing', name: trailer.name, kg: trailer.emptyFrontKg, isAssumed: !trailer.weighed };
}
