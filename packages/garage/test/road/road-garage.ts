import { readFileSync } from 'node:fs';
import type { Result } from '@waymend/core/result';
import { readGarage } from '../../src/file/read-garage.ts';
import type { Garage } from '../../src/record/schema.ts';
import { garageFile } from '../../src/record/schema.ts';

export const ROAD_TEXT = readFileSync(new URL('../data/garage-v1-road.yaml', import.meta.url), 'utf8');

/** A garage that uses every table. */
export function roadGarage(): Garage {
  const read = readGarage(ROAD_TEXT, 'road');
  if (!read.ok) throw new Error(read.error.map(({ message }) => message).join('\n'));
  return read.value;
}

/** A vehicle and some belongings: three wrenches, two belts of one job each, a litre bottle begun, a box of two. */
export function shed(): Garage {
  return garageFile.parse({
    waymend: 1,
    name: 'shed',
    vehicles: {
      ute: {
        name: 'Pickup',
        wheelbaseMm: 3000,
        emptyFrontKg: 1100,
        emptyRearKg: 900,
        ratedFrontKg: 1400,
        ratedRearKg: 1700,
        ratedGrossKg: 2900,
        odometerKm: 50_000,
      },
    },
    people: { ana: { name: 'Ana', skill: 3 } },
    bags: { roll: { name: 'tool roll' } },
    belongings: {
      wrench: { is: 'CW-13', name: 'wrench', copies: 3, bag: 'roll' },
      pliers: { name: 'pliers', bag: 'roll' },
      belt: { is: 'BELT', name: 'belt', copies: 2 },
      oil: { is: 'OIL', name: 'oil', copies: 2 },
    },
    trips: { loop: { name: 'Loop', vehicle: 'ute', people: ['ana'] } },
  });
}

/** A belt serves one job, an oil bottle holds four litres; nothing else is stock. */
export const stockOf = (is: string): number | null => (is === 'BELT' ? 1 : is === 'OIL' ? 4 : null);

export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** The id and sentence of a refusal. */
export function refusal<T>(result: Result<T>): readonly [string, string] {
  if (result.ok) throw new Error('was not refused');
  return [result.error.id, result.error.message];
}

/** Ids one after the other. */
export function ids(): (wish: string) => string {
  let n = 0;
  return (wish) => `${wish}-${++n}`;
}
