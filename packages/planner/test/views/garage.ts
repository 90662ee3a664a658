import { LIVE_AXLE_WAGON } from '@waymend/catalogue/patterns/live-axle-wagon';
import type { Garage } from '@waymend/garage/record/schema';
import { garageFile } from '@waymend/garage/record/schema';
import { startFromPattern } from '@waymend/garage/start/from-pattern';

const EMPTY = garageFile.parse({ waymend: 1, name: 'test' });

/** The catalogue's wagon with one driver, a trip of one leg and these further entities. */
export function wagon(more: object = {}): Garage {
  const names = { vehicle: 'Wagon', person: 'Ann', trip: 'Trip', leg: 'Leg', nose: 'Nose' };
  const { garage, vehicle } = startFromPattern(EMPTY, LIVE_AXLE_WAGON, names);
  const whole = {
    ...garage,
    people: { ann: { name: 'Ann', massKg: 80, skill: 3, berth: 'front-seats' } },
    trips: { trip: { name: 'Trip', vehicle, people: ['ann'], days: 5, kitBerth: 'drawer-left' } },
    legs: { one: { trip: 'trip', order: 1, km: 1500, surface: 'corrugated', helpKm: 200 } },
  };
  return garageFile.parse(merged(whole, more));
}

/** Tables of `more` are laid over those of `base`, row by row. */
function merged(base: object, more: object): object {
  const out: Record<string, unknown> = { ...base };
  for (const [table, rows] of Object.entries(more)) {
    const before: unknown = Reflect.get(base, table);
    out[table] = typeof before === 'object' && typeof rows === 'object' ? { ...before, ...rows } : rows;
  }
  return out;
}
