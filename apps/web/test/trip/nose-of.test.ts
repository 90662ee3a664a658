import { emptyGarage } from '@waymend/garage/log/empty-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { load, trip, vehicle } from '@waymend/garage/record/schema';
import { describe, expect, it } from 'vitest';
import { addLoad, changeTrip } from '../../src/places/garage/trip/edit-trip.ts';
import { noseOf } from '../../src/places/garage/trip/nose-of.ts';

const box = vehicle.parse({
  name: 'Box on a wheel',
  kind: 'trailer',
  wheelbaseMm: 3000,
  emptyFrontKg: 70,
  emptyRearKg: 500,
  ratedFrontKg: 150,
  ratedRearKg: 1200,
  ratedGrossKg: 1300,
});
const towing = trip.parse({ name: 'a', vehicle: 'ute', trailer: 'box', people: ['p'] });
const garage = { ...emptyGarage(), vehicles: { box }, trips: { t: towing } };
const nose = (of: Garage) => noseOf(of, of.trips['t'] ?? towing);

describe('[M13] the nose of a trailer', () => {
  it('is missed with its empty mass until it is a load of the trip', () => {
    expect(nose(garage)).toEqual({ kind: 'missing', name: 'Box on a wheel', kg: 70, isAssumed: true });
    const other = addLoad(garage, 't', 'w', load.parse({ name: 'Water', kg: 40, kind: 'water' }));
    expect(nose(other).kind).toBe('missing');
    const counted = addLoad(garage, 't', 'n', load.parse({ name: 'Nose', kg: 85, kind: 'trailer-nose' }));
    expect(nose(counted)).toEqual({ kind: 'right' });
    const weighed = { ...garage, vehicles: { box: { ...box, weighed: true } } };
    expect(nose(weighed)).toMatchObject({ isAssumed: false });
  });

  it('is left over when nothing is towed any more', () => {
    const counted = addLoad(garage, 't', 'n', load.parse({ name: 'Nose', kg: 85, kind: 'trailer-nose' }));
    const { trailer: _, ...alone } = counted.trips['t'] ?? towing;
    expect(nose({ ...counted, trips: { t: alone } })).toEqual({ kind: 'left-over', loads: ['n'], kg: 85 });
    expect(nose(changeTrip({ ...garage, trips: { t: alone } }, 't', { loads: [] }))).toEqual({
      kind: 'right',
    });
  });
});
