import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { garageFile } from '@waymend/garage/record/schema';
import { addFromPattern } from '@waymend/garage/vehicle/from-pattern';
import { standardHeadSizes } from '@waymend/garage/vehicle/head-sizes';
import { describe, expect, it } from 'vitest';

const EMPTY = garageFile.parse({ waymend: 1, name: 'test' });

describe('a vehicle from a pattern', () => {
  it('is a record that reads, with the berths of the pattern as its own', () => {
    for (const pattern of PATTERNS) {
      const { garage, id } = addFromPattern(EMPTY, pattern, 'Old truck');
      expect(id).toBe('old-truck');
      expect(garageFile.parse(garage)).toEqual(garage);
      expect(garage.vehicles[id]).toMatchObject({
        pattern: pattern.id,
        wheelbaseMm: pattern.wheelbaseMm,
        weighed: false,
      });
      expect(Object.values(garage.berths).map((b) => [b.vehicle, b.name, b.xMm])).toEqual(
        pattern.berths.map((b) => [id, b.name, b.xMm]),
      );
    }
  });

  it('touches nothing that is there: a second of the same kind gets ids of its own', () => {
    const [pattern] = PATTERNS;
    if (pattern === undefined) throw new Error('no pattern');
    const once = addFromPattern(EMPTY, pattern, 'Truck');
    const twice = addFromPattern(once.garage, pattern, 'Truck');
    expect(twice.id).not.toBe(once.id);
    expect(twice.garage).toMatchObject(once.garage);
    expect(Object.keys(twice.garage.berths)).toHaveLength(2 * pattern.berths.length);
  });
});

describe('sizes of heads that need not be asked about', () => {
  it('has what standards have and not what they have not', () => {
    const sizes = new Set(standardHeadSizes());
    for (const size of [
      '10 mm',
      '13 mm',
      '17 mm',
      '5.5 mm',
      '3/4 in',
      '11/16 in',
      'T30',
      'E12',
      'cross 2',
      'slot 6.5 mm',
    ])
      expect(sizes, size).toContain(size);
    for (const size of ['29 mm', '16.5 mm', 'T29', 'cross 9', '47/64 in'])
      expect(sizes, size).not.toContain(size);
  });
});
