import { expect, it } from 'vitest';
import { undoAndRedo } from '../../src/log/history.ts';
import { sayChange } from '../../src/log/say-change.ts';
import { Device, meet, stepOf } from './device.ts';

const bag = (name: string, grams = 0) => ({ name, grams });

it('[M15] the history says who did what and when, and each change in words', () => {
  const device = new Device('ute.1');
  const changes = [
    ...device.edit((g) => ({ ...g, bags: { b: bag('Blue bag') } }), 'Bag made'),
    ...device.edit((g) => ({ ...g, bags: { b: bag('Blue bag', 900) } }), 'Weighed: Blue bag'),
    ...device.edit((g) => ({ ...g, bags: {} }), 'Bag removed'),
  ];
  device.undo(stepOf(changes.slice(-1)));
  expect(device.log.steps.map(({ title, device: who }) => [title, who])).toEqual([
    ['Bag made', 'ute.1'],
    ['Weighed: Blue bag', 'ute.1'],
    ['Bag removed', 'ute.1'],
    ['undo', 'ute.1'],
  ]);
  const said = [...device.log.changes()].map((change) => sayChange(change, device.log));
  expect(said).toEqual([
    'bag "Blue bag" added',
    'name of bag "Blue bag": "Blue bag"',
    'mass, empty (g) of bag "Blue bag": 0',
    'mass, empty (g) of bag "Blue bag": 900, before 0',
    'bag "Blue bag" removed',
    'bag "Blue bag" put back',
  ]);
  const [named] = device.edit((g) => ({ ...g, name: 'x'.repeat(100) }));
  if (named === undefined) throw new Error('nothing changed');
  expect(sayChange(named, device.log)).toMatch(/^name of the garage: "x{59}\.\.\.$/);
});

it('[M15] undo is for the steps of this installation in any session, never for those of another', () => {
  const [ute, again, phone] = [new Device('ute.1'), new Device('ute.2'), new Device('phone.1')];
  const first = stepOf(ute.edit((g) => ({ ...g, name: 'one' })));
  meet(ute, phone, again);
  const theirs = stepOf(phone.edit((g) => ({ ...g, currency: 'ZAR' })));
  meet(ute, phone, again);
  expect(undoAndRedo(again.log, again.name).undo?.id).toBe(first);
  expect(undoAndRedo(phone.log, phone.name).undo?.id).toBe(theirs);
  const undone = stepOf(again.undo(first));
  expect(undoAndRedo(again.log, again.name)).toMatchObject({ undo: null, redo: { id: undone } });
  again.edit((g) => ({ ...g, name: 'two' }));
  expect(undoAndRedo(again.log, again.name).redo).toBeNull();
});

it('[M15] a step of which nothing stands any more is passed over', () => {
  const [ute, phone] = [new Device('ute.1'), new Device('phone.1')];
  const first = stepOf(ute.edit((g) => ({ ...g, currency: 'ZAR' })));
  ute.edit((g) => ({ ...g, name: 'mine' }));
  meet(ute, phone);
  phone.edit((g) => ({ ...g, name: 'theirs' }));
  meet(ute, phone);
  expect(undoAndRedo(ute.log, ute.name).undo?.id).toBe(first);
  ute.undo(first);
  expect(ute.log.garage).toMatchObject({ name: 'theirs', currency: 'EUR' });
});
