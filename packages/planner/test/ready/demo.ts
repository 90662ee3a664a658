import { readFileSync } from 'node:fs';
import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';

/** The demo, read as a plan would. */
export function demo(): Garage {
  const path = new URL('../../../../examples/demo.garage.yaml', import.meta.url);
  const read = readGarage(readFileSync(path, 'utf8'), 'demo');
  if (!read.ok) throw new Error(read.error.map((r) => r.message).join('\n'));
  return read.value;
}

/** The demo as it was before anything was noted of the road. */
export function unused(): Garage {
  return {
    ...demo(),
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
  };
}
