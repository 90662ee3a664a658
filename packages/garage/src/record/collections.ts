import type { Garage } from './schema.ts';

/** The tables of a garage that map an id to an entity, with the word for one of them. Free of the schema's code. */
export const ONE_OF = {
  vehicles: 'vehicle',
  fittings: 'fitting',
  berths: 'berth',
  people: 'person',
  belongings: 'belonging',
  bags: 'bag',
  pockets: 'pocket',
  loads: 'load',
  trips: 'trip',
  legs: 'leg',
  weakPoints: 'weak point',
  careMarks: 'care mark',
  musters: 'muster',
  counts: 'count',
  repairs: 'repair',
  rechecks: 'look at a repair',
  readings: 'odometer reading',
  breakdowns: 'breakdown',
  loans: 'loan',
  drills: 'drill',
  uses: 'note of use',
  words: 'word',
} as const satisfies Readonly<Record<Tables, string>>;

type Tables = {
  [K in keyof Garage]: Garage[K] extends Readonly<Record<string, object>> ? K : never;
}[keyof Garage];

export type Collection = keyof typeof ONE_OF;

export function isCollection(name: string): name is Collection {
  return Object.hasOwn(ONE_OF, name);
}

/** In the order of the schema. */
export const COLLECTIONS: readonly Collection[] = Object.keys(ONE_OF).filter(isCollection);
