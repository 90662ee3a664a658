import { PLACES } from '@waymend/catalogue/places/all';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { AREAS, areaOf } from '@waymend/planner/views/areas';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { fittingList } from '@waymend/planner/views/fitting-list';
import { walkOrder } from '@waymend/planner/views/walk-order';
import { describe, expect, it } from 'vitest';
import { wagon } from './garage.ts';

function rows(more: object = {}, trip: string | null = 'trip'): readonly FittingRow[] {
  const list = fittingList(wagon(more), 'live-axle-wagon', trip, SHIPPED_TRADE);
  if (!list.ok) throw new Error(list.error.message);
  return list.value;
}

describe('the list of fittings', () => {
  it('goes round the vehicle once: front axle, engine bay, underbody, rear, wheels, accessories', () => {
    const areas = rows().map((r) => AREAS.indexOf(r.area));
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    expect(new Set(areas).size).toBe(AREAS.length);
    expect(areaOf({ id: 'shock-upper', system: 'suspension-steering' }, 'rear')).toBe('rear');
    expect(areaOf({ id: 'shock-upper', system: 'suspension-steering' }, 'front')).toBe('front-axle');
    for (const place of PLACES) expect(AREAS).toContain(areaOf(place, undefined));
  });

  it('says which places only the owner has added', () => {
    const vehicle = 'live-axle-wagon';
    const usual = new Set(rows().map((r) => r.place));
    const missing = PLACES.find(({ id }) => !usual.has(id));
    if (missing === undefined) throw new Error('the wagon has every place');
    expect(rows().some((r) => r.added)).toBe(false);
    const fittings = {
      extra: { vehicle, place: missing.id, position: 'middle' },
      known: { vehicle, place: 'diff-fill-plug', position: 'rear', size: '24 mm', status: 'measured' },
      third: { vehicle, place: 'diff-fill-plug', position: 'third axle' },
    };
    const list = rows({ fittings });
    expect(list.filter((r) => r.added).map((r) => [r.fitting, r.position])).toEqual(
      expect.arrayContaining([
        ['extra', 'middle'],
        ['third', 'third axle'],
      ]) as unknown,
    );
    expect(list.filter((r) => r.added)).toHaveLength(2);
    // What it takes is what such a place usually takes, until somebody looks.
    expect(list.find((r) => r.fitting === 'extra')).toMatchObject({
      size: missing.sizes[0],
      status: 'assumed',
    });
    // The positions that were there before are there still.
    expect(list.flatMap((r) => (r.place === 'diff-fill-plug' ? [r.position] : [])).sort()).toEqual([
      'front',
      'rear',
      'third axle',
    ]);
  });

  it('shows what the owner recorded instead of what the pattern assumes, position by position', () => {
    const plain = rows().filter((r) => r.place === 'diff-fill-plug');
    expect(plain.map((r) => [r.position, r.size, r.status, r.fitting])).toEqual([
      ['front', '24 mm', 'assumed', null],
      ['rear', '24 mm', 'assumed', null],
    ]);
    const fill = {
      vehicle: 'live-axle-wagon',
      place: 'diff-fill-plug',
      position: 'rear',
      drive: 'square',
      size: '1/2 in',
      status: 'measured',
      by: 'Ann',
      on: '2026-03-02',
    };
    const read = rows({ fittings: { fill } }).filter((r) => r.place === 'diff-fill-plug');
    expect(read.map((r) => [r.id, r.size, r.status, r.by, r.on])).toEqual([
      ['diff-fill-plug@front', '24 mm', 'assumed', null, null],
      ['fill', '1/2 in', 'measured', 'Ann', '2026-03-02'],
    ]);
  });

  it('counts the jobs of the trip, and none without one', () => {
    const nuts = rows().find((r) => r.place === 'wheel-nut');
    expect(nuts?.jobs.length).toBeGreaterThan(0);
    expect(nuts?.stops).toBeGreaterThan(0);
    expect(rows({}, null).every((r) => r.jobs.length === 0 && r.stops === 0)).toBe(true);
  });
});

describe('the walk round', () => {
  it('starts with the places that the jobs lean on most, and leaves none out', () => {
    const list = rows();
    const { first, second } = walkOrder(list);
    expect([...first, ...second].map((r) => r.id).sort()).toEqual(list.map((r) => r.id).sort());
    expect(first.length).toBeGreaterThan(4);
    const least = Math.min(...first.map((r) => r.stops));
    expect(least).toBeGreaterThan(0);
    for (const r of second) expect(r.stops).toBeLessThanOrEqual(least);
    expect(first.map((r) => r.id)).toContain('wheel-nut');
  });
});
