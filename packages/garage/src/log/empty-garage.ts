import type { Garage } from '../record/schema.ts';

/** The fold of no changes at all. */
export function emptyGarage(): Garage {
  return {
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
    pockets: {},
    loads: {},
    trips: {},
    legs: {},
    weakPoints: {},
    careMarks: {},
    musters: {},
    counts: {},
    repairs: {},
    rechecks: {},
    readings: {},
    breakdowns: {},
    loans: {},
    drills: {},
    uses: {},
    words: {},
  };
}
