import type { Belonging, Garage } from '@waymend/garage/record/schema';

export interface Away {
  /** Names of its berth, of the vehicle that has it, and of the one the trip goes with. */
  readonly berth: string;
  readonly vehicle: string;
  readonly here: string;
  /** Berths of the trip's vehicle, from the front. */
  readonly offered: readonly { readonly id: string; readonly name: string }[];
}

/** What is wrong with the berth of a belonging on a trip with this vehicle, since the kit rides in it (M13); null when nothing is. */
export function berthAway(
  { berths, vehicles }: Pick<Garage, 'berths' | 'vehicles'>,
  { berth, forSale }: Pick<Belonging, 'berth' | 'forSale'>,
  vehicle: string,
): Away | null {
  const its = berth === undefined || forSale ? undefined : berths[berth];
  if (its === undefined || its.vehicle === vehicle) return null;
  const nameOf = (id: string): string => vehicles[id]?.name ?? id;
  const offered = Object.entries(berths)
    .filter(([, one]) => one.vehicle === vehicle)
    .sort(([, a], [, b]) => a.xMm - b.xMm)
    .map(([id, { name }]) => ({ id, name }));
  return { berth: its.name, vehicle: nameOf(its.vehicle), here: nameOf(vehicle), offered };
}
