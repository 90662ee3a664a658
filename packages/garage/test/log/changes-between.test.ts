import fc from 'fast-check';
import { expect, it } from 'vitest';
import { EXISTS } from '../../src/log/change.ts';
import { fold } from '../../src/log/fold.ts';
import { anyGarage } from '../garage-arbitrary.ts';
import { Device, stepOf } from './device.ts';

it('[M15] the changes between garages lead from one to the next exactly, with deletions and re-creations', () => {
  fc.assert(
    fc.property(fc.array(anyGarage, { minLength: 2, maxLength: 5 }), (garages) => {
      const device = new Device('d.1');
      for (const garage of garages) {
        device.edit(() => garage);
        expect(device.log.garage).toEqual(garage);
        expect(device.log.conflicts).toEqual([]);
      }
      expect(fold(device.log.changes()).garage).toEqual(garages.at(-1));
    }),
    { numRuns: 500 },
  );
});

it('[M15] nothing is written for what is the same, and one field is one change', () => {
  fc.assert(
    fc.property(anyGarage, (garage) => {
      const device = new Device('d.1');
      device.edit(() => garage);
      expect(device.edit(() => structuredClone(garage))).toEqual([]);
      const changes = device.edit((now) => ({ ...now, name: `${now.name}!` }));
      expect(changes.map(({ entity, field }) => [entity, field])).toEqual([['garage', 'name']]);
    }),
  );
});

it('[M15] undoing steps from the last to the first goes back through every garage, and redoing forward again', () => {
  fc.assert(
    fc.property(fc.array(anyGarage, { minLength: 1, maxLength: 5 }), (garages) => {
      const device = new Device('d.1');
      const seen = [device.log.garage];
      const steps: string[] = [];
      for (const garage of garages) {
        const changes = device.edit(() => garage);
        if (changes.length === 0) continue;
        steps.push(stepOf(changes));
        seen.push(garage);
      }
      for (let round = 0; round < 2; round++) {
        const undone: string[] = [];
        for (let i = steps.length - 1; i >= 0; i--) {
          undone.push(stepOf(device.undo(steps[i] ?? '')));
          expect(device.log.garage).toEqual(seen[i]);
        }
        for (let i = 0; i < steps.length; i++) {
          steps[i] = stepOf(device.undo(undone.pop() ?? ''));
          expect(device.log.garage).toEqual(seen[i + 1]);
        }
      }
      expect(device.log.conflicts).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

it('[M15] a thing that is made anew under an old id has nothing of the old one', () => {
  const device = new Device('d.1');
  device.edit((g) => ({ ...g, words: { '3/8': { means: 'drive' } } }));
  const [gone] = device.edit((g) => ({ ...g, words: {} }));
  expect(gone).toMatchObject({ entity: 'words/3/8', field: EXISTS, value: false });
  device.edit((g) => ({ ...g, words: { '3/8': { means: 'spanner' } } }));
  expect(device.log.garage.words).toEqual({ '3/8': { means: 'spanner' } });
});
