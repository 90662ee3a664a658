import { garageFile } from '@waymend/garage/record/schema';
import { expect, it } from 'vitest';
import * as edit from '../../src/places/garage/people/edit-people.ts';
import { levelOf } from '../../src/places/garage/people/levels.ts';

const GARAGE = garageFile.parse({
  waymend: 1,
  name: 'test',
  people: { ana: { name: 'Ana', skill: 3, berth: 'x' }, ben: { name: 'Ben', skill: 1 } },
  trips: {
    one: { name: 'One', vehicle: 'v', people: ['ana', 'ben'] },
    two: { name: 'Two', vehicle: 'v', people: ['ana'] },
  },
});

it('somebody who alone drives a trip cannot be removed, and the trips are named', () => {
  expect(edit.aloneOn(GARAGE, 'ana')).toEqual(['Two']);
  expect(edit.removePerson(GARAGE, 'ana')).toBe(GARAGE);
});

it('somebody who is removed leaves every trip', () => {
  const gone = edit.removePerson(GARAGE, 'ben');
  expect(Object.keys(gone.people)).toEqual(['ana']);
  expect(gone.trips['one']?.people).toEqual(['ana']);
});

it('skill by system is set where it differs and dropped where it does not', () => {
  const less = edit.setSystemSkill(GARAGE, 'ana', 'wiring', 1);
  expect(less.people['ana']?.skills).toEqual({ wiring: 1 });
  expect(edit.setSystemSkill(less, 'ana', 'wiring', null).people['ana']?.skills).toEqual({});
});

it('a seat that is given up is no field', () => {
  const free = edit.changePerson(GARAGE, 'ana', Object.fromEntries([['berth', undefined]]));
  expect(free.people['ana']).not.toHaveProperty('berth');
});

it('a new person is one the file knows', () => {
  const more = edit.addPerson(GARAGE, 'cy', 'Cy');
  expect(garageFile.parse(more).people['cy']).toEqual(more.people['cy']);
});

it('every skill has its step', () => {
  expect([0, 1, 2.4, 5, 9].map(levelOf)).toEqual(['1', '1', '2', '5', '5']);
});
