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
