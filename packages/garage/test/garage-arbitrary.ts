import fc from 'fast-check';
import type { Garage } from '../src/record/schema.ts';
import { garageFile } from '../src/record/schema.ts';

/** Few ids, so that two garages share some, and edits, deletions and re-creations happen by chance. */
const id = fc.constantFrom('a', 'b', 'c', '7', 'lamp-1', 'lamp-10');
const words = fc.oneof(
  fc.constantFrom('ratchet', 'jack', ''),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const finite = fc.double({ min: -5, max: 500, noNaN: true });
const some = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

function present(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}

const belonging = fc
  .record({
    is: some(fc.constantFrom('SK3-10', 'SK3-13')),
    name: some(words),
    copies: some(fc.integer({ min: 1, max: 3 })),
    grams: some(finite),
    state: some(fc.constantFrom('ready', 'flat', 'lent')),
    set: some(
      fc.record({ carry: fc.constantFrom('whole', 'loose'), caseGrams: fc.integer({ min: 0, max: 3 }) }),
    ),
    pin: some(fc.constantFrom('always', 'never')),
    note: some(words),
  })
  .map(present);
const vehicle = fc
  .record({
    name: words,
    features: some(fc.subarray(['diesel', 'winch'])),
    wheelbaseMm: finite,
    emptyFrontKg: finite,
    emptyRearKg: finite,
    ratedFrontKg: finite,
    ratedRearKg: finite,
    ratedGrossKg: finite,
    tyre: some(fc.record({ loadIndex: fc.integer({ min: 90, max: 92 }) })),
    recentWork: some(fc.array(fc.constantFrom('tyres', 'brakes'), { maxLength: 2 })),
  })
  .map(present);
const person = fc
  .record({
    name: words,
    skill: fc.integer({ min: 1, max: 5 }),
    skills: some(fc.dictionary(fc.constantFrom('engine', 'brakes'), fc.integer({ min: 1, max: 5 }))),
  })
  .map(present);
const word = fc.record({ means: words });
const day = fc.constantFrom('2026-01-31', '2026-02-28', '2027-12-01');
const km = fc.integer({ min: 0, max: 90_000 });
const pieces = fc.integer({ min: 0, max: 3 });
/** The tables of stowage and of the road, by name. */
const ROAD = {
  pockets: fc.record({
    bag: id,
    name: words,
    widthMm: finite,
    lengthMm: finite,
    openEnded: some(fc.boolean()),
  }),
  careMarks: fc.record({
    belonging: some(id),
    rule: words,
    on: day,
    chargePct: some(fc.integer({ min: 0, max: 100 })),
  }),
  musters: fc.record({ vehicle: id, trip: some(id), job: some(words), openedOn: day, closedOn: some(day) }),
  counts: fc.record({
    muster: id,
    belonging: id,
    out: some(pieces),
    back: some(pieces),
    used: some(fc.constantFrom(0, 0.5, 2)),
    missingParts: some(fc.array(words, { maxLength: 2 })),
  }),
  repairs: fc.record({
    vehicle: id,
    job: words,
    on: day,
    atKm: km,
    lasts: fc.constantFrom('permanent', 'temporary', 'made-safe'),
    trustKm: some(km),
    lookAgainKm: some(fc.array(km, { maxLength: 2 })),
    mendedOn: some(day),
  }),
  rechecks: fc.record({ repair: id, atKm: km, on: day, found: some(fc.constantFrom('good', 'worse')) }),
  readings: fc.record({ vehicle: id, km, on: day, oldKm: some(km) }),
  breakdowns: fc.record({
    vehicle: id,
    failure: words,
    on: day,
    atKm: km,
    repair: some(id),
    note: some(words),
  }),
  loans: fc.record({
    belonging: id,
    copies: some(fc.integer({ min: 1, max: 3 })),
    to: words,
    on: day,
    backOn: some(day),
  }),
  drills: fc.record({ job: words, vehicle: id, on: day, fetched: some(fc.array(words, { maxLength: 2 })) }),
  uses: fc.record({ trip: id, thing: some(words), said: fc.constantFrom('used', 'wished-for', 'untouched') }),
};
const road = fc.record(
  Object.fromEntries(
    Object.entries(ROAD).map(([table, entity]) => [
      table,
      some(fc.dictionary(id, (entity as fc.Arbitrary<object>).map(present), { maxKeys: 2 })),
    ]),
  ),
);

export const anyGarage: fc.Arbitrary<Garage> = fc
  .record({
    waymend: fc.constant(1),
    name: words,
    currency: some(fc.constantFrom('EUR', 'ZAR')),
    units: some(fc.constantFrom('metric', 'inch')),
    belongings: some(fc.dictionary(id, belonging, { maxKeys: 6 })),
    vehicles: some(fc.dictionary(id, vehicle, { maxKeys: 2 })),
    people: some(fc.dictionary(id, person, { maxKeys: 3 })),
    words: some(fc.dictionary(fc.constantFrom('3/8', 'a/b/c', 'big hammer', '7'), word, { maxKeys: 3 })),
  })
  .chain((input) => road.map((tables) => garageFile.parse({ ...present(input), ...present(tables) })));
