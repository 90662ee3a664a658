import { expect, it } from 'vitest';
import { Log } from '../../src/log/log.ts';
import type { Belonging } from '../../src/record/schema.ts';
import { belonging } from '../../src/record/schema.ts';
import { Device } from './device.ts';
import { spent } from '../processor-time.ts';

const BELONGINGS = 20_000;
/** Processor time, which a busy machine stretches less than the clock; several times what was measured, so that only a change of order fails. */
const FOLD_MS = 8000;
const EDIT_MS = 60;

function many(): Record<string, Belonging> {
  const one = belonging.parse({ is: 'SK3-10', name: 'Socket', grams: 40, line: 'a line', note: 'a note' });
  return Object.fromEntries(Array.from({ length: BELONGINGS }, (_, i) => [`b${i}`, { ...one, grams: i }]));
}

it('[M15] folds 240,000 changes in seconds, and one edit on them costs milliseconds', () => {
  const device = new Device('d.1');
  device.edit((g) => ({ ...g, belongings: many() }));
  expect(device.log.size).toBe(BELONGINGS * 12);
  const changes = structuredClone([...device.log.changes()]);
  const heapBefore = process.memoryUsage().heapUsed;
  const start = spent();
  const log = new Log();
  log.add(changes);
  expect(log.garage).toEqual(device.log.garage);
  const foldMs = spent() - start;
  const heapMb = (process.memoryUsage().heapUsed - heapBefore) / 1e6;

  const times: number[] = [];
  for (let i = 0; i < 30; i++) {
    const begin = spent();
    device.edit((g) => {
      const before = g.belongings['b77'];
      if (before === undefined) throw new Error('it is not there');
      return { ...g, belongings: { ...g.belongings, b77: { ...before, grams: 1000 + i } } };
    });
    expect(device.log.garage.belongings['b77']?.grams).toBe(1000 + i);
    times.push(spent() - begin);
  }
  const median = times.sort((a, b) => a - b)[15] ?? Infinity;
  console.log(
    `fold ${foldMs.toFixed(0)} ms, heap ${heapMb.toFixed(0)} MB, edit ${median.toFixed(2)} ms (median of 30)`,
  );
  expect(foldMs).toBeLessThan(FOLD_MS);
  expect(median).toBeLessThan(EDIT_MS);
});
