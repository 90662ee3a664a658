import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Change } from '../../src/log/change.ts';
import { EXISTS } from '../../src/log/change.ts';
import { fold } from '../../src/log/fold.ts';
import { checkChange, readChanges } from '../../src/log/read-changes.ts';
import { anyGarage } from '../garage-arbitrary.ts';
import { Device } from './device.ts';

it('[M15] what one device writes, another reads, believes and folds to the same garage', () => {
  fc.assert(
    fc.property(anyGarage, anyGarage, (one, two) => {
      const device = new Device('d.1');
      device.edit(() => one);
      device.edit(() => two);
      const sent: unknown = JSON.parse(JSON.stringify([...device.log.changes()]));
      const { changes, refused } = readChanges(sent);
      expect(refused).toEqual([]);
      const { garage, problems } = fold(changes, checkChange);
      expect(problems).toEqual([]);
      // JSON has no negative zero.
      expect(garage).toEqual(JSON.parse(JSON.stringify(two)));
    }),
    { numRuns: 200 },
  );
});

function foreign(over: Partial<Change>): Change {
  const time = '0kzzzzzzz-0000-0kzzzzzzz';
  const step = { id: 'x.1.0', title: 'from elsewhere' };
  return {
    id: 'x.1.9',
    device: 'x.1',
    time,
    entity: 'bags/b',
    field: 'grams',
    value: 5,
    replaces: [],
    step,
    ...over,
  };
}

it.each([
  ['a text where a number belongs', { value: '5 kg' }],
  ['a field nobody knows', { field: 'colour', value: 'red' }],
  ['a needed field left out', { field: 'name', value: null }],
  ['a collection nobody knows', { entity: 'ships/s' }],
  ['an id that cannot be one', { entity: 'bags/Not An Id', field: EXISTS, value: true }],
  ['a name of the language', { entity: 'words/__proto__', field: 'means', value: 'x' }],
  ['existence that is no yes or no', { field: EXISTS, value: 'maybe' }],
  ['a currency that is none', { entity: 'garage', field: 'currency', value: 'euro' }],
])('[M15] keeps %s without effect and lists it in a sentence', (_, over) => {
  const device = new Device('d.1');
  device.edit((g) => ({ ...g, bags: { b: { name: 'Blue', grams: 1 } } }));
  const bad = foreign({ ...over, replaces: [...device.log.changes()].map(({ id }) => id) });
  const { garage, problems } = fold([...device.log.changes(), bad], checkChange);
  expect(garage).toEqual(device.log.garage);
  expect(problems).toEqual([{ change: bad, sentence: expect.stringMatching(/kept/) as string }]);
});

it('[M15] refuses what is no change at all, entry by entry, and never throws', () => {
  const good = foreign({});
  const { changes, refused } = readChanges([good, { ...good, time: 'noon' }, 7, { ...good, extra: 1 }]);
  expect(changes).toEqual([good]);
  expect(refused).toEqual([
    'Entry 2 is not a change (time is wrong) and was not taken',
    'Entry 3 is not a change (its form is wrong) and was not taken',
    'Entry 4 is not a change (its form is wrong) and was not taken',
  ]);
  fc.assert(
    fc.property(fc.anything(), (input) => {
      expect(readChanges([input]).refused).toHaveLength(1);
    }),
  );
  expect(readChanges('text').refused).toHaveLength(1);
});
