import type { Garage } from '@waymend/garage/record/schema';

/** A record with nothing in it yet. */
export const EMPTY_GARAGE: Garage = {
  waymend: 1,
  name: '',
  currency: 'EUR',
  units: 'metric',
  vehicles: {},
  fittings: {},
  berths: {},
  people: {},
  belongings: {},
  bags: {},
  loads: {},
  trips: {},
  legs: {},
  weakPoints: {},
  words: {},
};

/** Nothing has been entered: no entity of any kind and no name. */
export function isEmptyGarage(garage: Garage): boolean {
  return (
    garage.name === '' &&
    Object.values(garage).every((value) => typeof value !== 'object' || Object.keys(value).length === 0)
  );
}
