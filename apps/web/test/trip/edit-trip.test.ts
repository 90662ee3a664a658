import { readGarage } from '@waymend/garage/file/read-garage';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { Garage, Leg } from '@waymend/garage/record/schema';
import { garageFile } from '@waymend/garage/record/schema';
import { describe, expect, it } from 'vitest';
import * as edit from '../../src/places/garage/trip/edit-trip.ts';

const CAR = {
  wheelbaseMm: 2800,
  emptyFrontKg: 900,
  emptyRearKg: 800,
  ratedFrontKg: 1200,
  ratedRearKg: 1500,
  ratedGrossKg: 2600,
};
const GARAGE: Garage = garageFile.parse({
  waymend: 1,
  name: 'test',
  vehicles: { a: { name: 'A', ...CAR }, b: { name: 'B', ...CAR } },
  berths: { boot: { vehicle: 'a', name: 'boot', xMm: 2700 }, box: { vehicle: 'b', name: 'box', xMm: 3000 } },
  people: { ana: { name: 'Ana', skill: 3 }, ben: { name: 'Ben', skill: 2 } },
  loads: {
    water: { name: 'water', kg: 40, kind: 'water', berth: 'boot' },
    tent: { name: 'tent', kg: 20, kind: 'camping', berth: 'boot' },
  },
  trips: {
    one: { name: 'One', vehicle: 'a', people: ['ana'], loads: ['water', 'tent'], kitBerth: 'boot' },
    two: { name: 'Two', vehicle: 'a', people: ['ana'], loads: ['tent'] },
  },
  legs: {
    l1: { trip: 'one', order: 1, km: 100, surface: 'sealed', helpKm: 20 },
    l2: { trip: 'one', order: 2, km: 300, surface: 'rock', helpKm: 90 },
    l3: { trip: 'one', order: 3, km: 50, surface: 'sand', helpKm: 90 },
    k1: { trip: 'two', order: 1, km: 10, surface: 'sealed', helpKm: 5 },
  },
});
const NEW_LEG = { ...edit.PLAIN_LEG, km: 10, surface: 'gravel', helpKm: 5 } as const;
const order = (garage: Garage, trip = 'one') => edit.legsOf(garage, trip).map(([id]) => id);

/** What the screens leave behind must be a garage that can be opened again. */
function stillOpens(garage: Garage): void {
  expect(readGarage(writeGarage(garage), 'edited.yaml', { for: 'edit' })).toEqual({
    ok: true,
    value: garage,
  });
}

describe('legs', () => {
  it('keep the order they are driven in, and move by one place', () => {
    expect(order(GARAGE)).toEqual(['l1', 'l2', 'l3']);
    expect(order(edit.moveLeg(GARAGE, 'l3', -1))).toEqual(['l1', 'l3', 'l2']);
    expect(order(edit.moveLeg(GARAGE, 'l1', 1))).toEqual(['l2', 'l1', 'l3']);
    expect(edit.moveLeg(GARAGE, 'l1', -1)).toBe(GARAGE);
    expect(edit.moveLeg(GARAGE, 'l3', 1)).toBe(GARAGE);
  });

  it('are added at the end and taken out', () => {
    const more = edit.addLeg(GARAGE, 'one', 'l9', NEW_LEG);
    expect(order(more)).toEqual(['l1', 'l2', 'l3', 'l9']);
    expect(order(edit.removeLeg(more, 'l2'))).toEqual(['l1', 'l3', 'l9']);
    stillOpens(more);
  });

  it('lose a field that is cleared', () => {
    const hot = edit.changeLeg(GARAGE, 'l1', { maxC: 41 });
    expect(hot.legs['l1']?.maxC).toBe(41);
    const cleared: Partial<Leg> = Object.fromEntries([['maxC', undefined]]);
    expect(Object.keys(edit.changeLeg(hot, 'l1', cleared).legs['l1'] ?? {})).not.toContain('maxC');
  });
});

describe('trips', () => {
  const ids = { trip: 'new', leg: (n: number) => `new-${n}` };

  it('are copied with their legs and share their loads', () => {
    const copied = edit.copyTrip(GARAGE, 'one', ids, 'One, copy');
    expect(order(copied, 'new')).toEqual(['new-1', 'new-2', 'new-3']);
    expect(copied.trips['new']).toEqual({ ...GARAGE.trips['one'], name: 'One, copy' });
    expect(order(edit.changeLeg(copied, 'new-1', { km: 1 }))).toEqual(['l1', 'l2', 'l3']);
    stillOpens(copied);
  });

  it('go with their legs and with what no other trip carries', () => {
    const gone = edit.removeTrip(GARAGE, 'one');
    expect(Object.keys(gone.trips)).toEqual(['two']);
    expect(Object.keys(gone.legs)).toEqual(['k1']);
    expect(Object.keys(gone.loads)).toEqual(['tent']);
    stillOpens(gone);
  });

  it('begin anew with the people and vehicle of the open one', () => {
    const made = edit.newTrip(GARAGE, ids, { vehicle: 'a', people: ['ana', 'ben'] }, 'New', NEW_LEG);
    expect(made.trips['new']).toMatchObject({ vehicle: 'a', people: ['ana', 'ben'], loads: [] });
    stillOpens(made);
  });

  it('that change vehicle leave its berths behind, but not for another trip', () => {
    const changed = edit.changeVehicle(GARAGE, 'one', 'b');
    expect(changed.trips['one']).not.toHaveProperty('kitBerth');
    expect(changed.loads['water']).not.toHaveProperty('berth');
    expect(changed.loads['tent']?.berth).toBe('boot');
    stillOpens(changed);
  });

  it('always have somebody who drives', () => {
    expect(edit.seatPerson(GARAGE, 'one', 'ana', false)).toBe(GARAGE);
    const both = edit.seatPerson(GARAGE, 'one', 'ben', true);
    expect(both.trips['one']?.people).toEqual(['ana', 'ben']);
    expect(edit.seatPerson(both, 'one', 'ana', false).trips['one']?.people).toEqual(['ben']);
  });
});

describe('loads', () => {
  it('ride in the berth they are given, whatever distance was said before', () => {
    const far = edit.changeLoad(GARAGE, 'water', { xMm: 4000 });
    expect(edit.changeLoad(far, 'water', { kg: 50 }).loads['water']?.xMm).toBe(4000);
    expect(edit.changeLoad(far, 'water', { berth: 'boot' }).loads['water']).not.toHaveProperty('xMm');
  });

  it('leave a trip, and the record once nobody carries them', () => {
    const off = edit.removeLoad(GARAGE, 'one', 'tent');
    expect(off.trips['one']?.loads).toEqual(['water']);
    expect(off.loads).toHaveProperty('tent');
    expect(edit.removeLoad(off, 'two', 'tent').loads).not.toHaveProperty('tent');
    stillOpens(edit.addLoad(off, 'one', 'air', { name: 'air', kg: 2, kind: 'air' }));
  });
});
