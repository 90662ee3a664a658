import { emptyGarage } from '@waymend/garage/log/empty-garage';
import { expect, it } from 'vitest';
import { titleOf, wordsOf } from '../../src/places/garage/record/conflict-words.ts';

const GARAGE = {
  ...emptyGarage(),
  bags: { roll: { name: 'Blue roll', grams: 400 } },
};

it('a conflict says which thing and which field in words, and values by name', () => {
  expect(titleOf(GARAGE, 'bags/roll', 'limitKg', 'british')).toBe('Blue roll: bears at most (kg)');
  expect(titleOf(GARAGE, 'vehicles/gone', 'tyre', 'american')).toBe('gone: tires');
  expect(wordsOf(GARAGE, 'bag', 'roll')).toBe('Blue roll');
  expect(wordsOf(GARAGE, 'bag', 'gone')).toBe('gone');
  expect(wordsOf(GARAGE, 'bag', null)).toBe('nothing');
  expect(wordsOf(GARAGE, 'people', [])).toBe('nothing');
  expect(wordsOf(GARAGE, 'firstGrab', true)).toBe('yes');
  expect(titleOf({ ...GARAGE, name: 'Mine' }, 'garage', 'units', 'british')).toBe('Mine: units');
});
