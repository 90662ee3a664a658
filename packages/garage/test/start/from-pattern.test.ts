import { PATTERNS, patternOf } from '@waymend/catalogue/patterns/all';
import { describe, expect, it } from 'vitest';
import { readGarage } from '../../src/file/read-garage.ts';
import { writeGarage } from '../../src/file/write-garage.ts';
import type { Garage } from '../../src/record/schema.ts';
import { garageFile } from '../../src/record/schema.ts';
import { startFromPattern } from '../../src/start/from-pattern.ts';

const EMPTY: Garage = garageFile.parse({ waymend: 1, name: '' });
const NAMES = {
  vehicle: 'Ute',
  person: 'Driver',
  trip: 'First trip',
  leg: 'There',
  nose: 'Nose of the trailer',
};

function pattern(id: string) {
  const found = patternOf(id);
  if (found === null) throw new Error(`no pattern ${id}`);
  return found;
}

describe('a garage from a pattern', () => {
  it.each(PATTERNS.filter(({ kind }) => kind === 'vehicle').map(({ id }) => id))(
    'from %s alone is a garage that can be planned for',
    (id) => {
      const { garage, vehicle, trip } = startFromPattern(EMPTY, pattern(id), NAMES);
      expect(trip).toBe('first-trip');
      expect(garage.vehicles[vehicle]?.ratingsAssumed).toBe(true);
      expect(garage.vehicles[vehicle]?.weighed).toBe(false);
      const read = readGarage(writeGarage(garage), 'start.yaml', { for: 'plan' });
      expect(read).toEqual({ ok: true, value: garage });
    },
  );

  it('seats the driver in front and puts the kit in the roomiest berth that is neither seat nor roof', () => {
    const { garage, trip } = startFromPattern(EMPTY, pattern('live-axle-wagon'), NAMES);
    expect(garage.people['driver']?.berth).toBe('front-seats');
    expect(garage.trips[trip ?? '']?.kitBerth).toBe('load-floor');
  });

  it('keeps everything that is there, and the people who are there travel', () => {
    const first = startFromPattern(EMPTY, pattern('van'), NAMES).garage;
    const second = startFromPattern(first, pattern('van'), { ...NAMES, vehicle: 'Second van' });
    expect(second.vehicle).toBe('van-2');
    expect(second.trip).toBe('first-trip-2');
    expect(second.garage.trips['first-trip-2']?.people).toEqual(['driver']);
    expect(second.garage).toMatchObject(first);
    expect(second.garage.berths['front-seats-2']?.vehicle).toBe('van-2');
    expect(second.garage.trips['first-trip-2']?.kitBerth).toBe('rear-garage-2');
  });

  it('[M13] hitches a trailer to the trip and counts its nose as a load', () => {
    const { garage } = startFromPattern(EMPTY, pattern('live-axle-wagon'), NAMES);
    const towed = startFromPattern(
      garage,
      pattern('camper-trailer'),
      { ...NAMES, vehicle: 'Camper' },
      'first-trip',
    );
    const trip = towed.garage.trips['first-trip'];
    expect(trip?.trailer).toBe('camper-trailer');
    expect(trip?.loads.map((id) => towed.garage.loads[id])).toEqual([
      { name: 'Nose of the trailer', kg: pattern('camper-trailer').emptyFrontKg, kind: 'trailer-nose' },
    ]);
    expect(readGarage(writeGarage(towed.garage), 'start.yaml').ok).toBe(true);
  });

  it('lets a trailer wait for what tows it', () => {
    const trailer = startFromPattern(EMPTY, pattern('camper-trailer'), { ...NAMES, vehicle: 'Camper' });
    expect(trailer.trip).toBe(null);
    expect(trailer.garage.trips).toEqual({});
    const both = startFromPattern(trailer.garage, pattern('van'), NAMES);
    expect(both.garage.trips['first-trip']?.trailer).toBe('camper-trailer');
  });
});
