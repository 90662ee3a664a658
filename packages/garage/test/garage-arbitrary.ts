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
  .map((input) => garageFile.parse(present(input)));
