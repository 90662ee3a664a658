import { RATE_FACTORS } from '@waymend/catalogue/rates/all';
import type { Leg } from '@waymend/garage/record/schema';
import { leg } from '@waymend/garage/record/schema';
import { describe, expect, it } from 'vitest';
import { fieldUnit } from '../../src/format/field-units.ts';
import { findJobs } from '../../src/places/garage/find-jobs.ts';
import { expectedRows, expectedText } from '../../src/places/garage/trip/expected-rows.ts';
import { routeStrip } from '../../src/places/garage/trip/route-strip-layout.ts';
import { freshId } from '../../src/shell/fresh-id.ts';
import en from '../../src/words/en.json';

const route = (
  ...legs: readonly (readonly [km: number, helpKm: number])[]
): readonly (readonly [string, Leg])[] =>
  legs.map(([km, helpKm], n) => [`l${n}`, leg.parse({ trip: 't', order: n, km, helpKm, surface: 'gravel' })]);

describe('the strip of the route', () => {
  it('is to scale: lengths by km, steps by km to help', () => {
    const strip = routeStrip(route([100, 50], [300, 330]), 400, 100);
    expect(strip.totalKm).toBe(400);
    expect(strip.legs.map(({ x, width }) => [x, width])).toEqual([
      [0, 100],
      [100, 300],
    ]);
    const [near, far] = strip.legs;
    expect((far?.help ?? 0) / (near?.help ?? 1)).toBeCloseTo(330 / 50, 9);
    expect(far?.help).toBeLessThanOrEqual(100);
    expect(strip.limits.map(({ km }) => km)).toEqual([50, 300]);
    expect(strip.limits[0]?.y).toBeCloseTo(near?.help ?? 0, 9);
  });

  it('shows only trust limits that are within the drawing', () => {
    expect(routeStrip(route([100, 60]), 400, 100).limits.map(({ km }) => km)).toEqual([50]);
  });

  it('keeps balloons of short legs apart, in order and inside', () => {
    const strip = routeStrip(route([500, 9], [1, 9], [1, 9], [1, 9], [1, 9]), 358, 100);
    const at = strip.legs.map(({ balloonX }) => balloonX);
    for (let n = 1; n < at.length; n++)
      expect((at[n] ?? 0) - (at[n - 1] ?? 0)).toBeGreaterThanOrEqual(30 - 1e-9);
    expect(Math.max(...at)).toBeLessThanOrEqual(358 - 15);
    expect(Math.min(...at)).toBeGreaterThanOrEqual(15);
  });

  it('draws a route of nothing without falling over', () => {
    const strip = routeStrip(route([0, 0]), 400, 100);
    expect(strip.totalKm).toBe(0);
    expect(strip.ticks).toEqual([]);
    expect(strip.legs[0]?.width).toBe(0);
  });
});

describe('failures to expect', () => {
  const group = (id: string, failures: number) => ({
    group: id,
    title: id,
    failures,
    stopping: failures / 2,
  });

  it('stand most first, with what they were where they have changed', () => {
    const { rows, rest, total, was } = expectedRows(
      [group('a', 0.2), group('b', 1), group('c', 0.001)],
      [group('a', 0.1), group('b', 1), group('c', 0.001)],
    );
    expect(rows.map(({ group: id, before }) => [id, before])).toEqual([
      ['b', null],
      ['a', 0.1],
    ]);
    expect(rest).toBeCloseTo(0.001, 9);
    expect(total.failures).toBeCloseTo(1.201, 9);
    expect(total.stopping).toBeCloseTo(0.6005, 9);
    expect(was?.failures).toBeCloseTo(1.101, 9);
  });

  it('say nothing of a change when there is none', () => {
    expect(expectedRows([group('a', 1)], [group('a', 1)]).was).toBe(null);
    expect(expectedRows([group('a', 1)], null).was).toBe(null);
  });

  it.each([
    [0, '0'],
    [0.0361, '0.036'],
    [0.04, '0.040'],
    [1.234, '1.2'],
    [9.97, '10'],
    [23.4, '23'],
  ])('%s is said with two figures: %s', (value, text) => {
    expect(expectedText(value)).toBe(text);
  });
});

describe('fields in the owner’s units', () => {
  it.each([
    ['distance', 100, 160.934],
    ['load', 10, 4.536],
    ['height', 10_000, 3048],
    ['temperature', 95, 35],
  ] as const)('a typed %s of %s is recorded as %s and shown again as typed', (of, typed, recorded) => {
    const unit = fieldUnit(of, 'inch');
    expect(unit.read(typed)).toBe(recorded);
    expect(unit.show(unit.read(typed))).toBe(typed);
    expect(unit.read(null)).toBe(null);
  });

  it('are the recorded ones in metric', () => {
    expect(fieldUnit('distance', 'metric').show(12.5)).toBe(12.5);
    expect(fieldUnit('temperature', 'metric').read(-12)).toBe(-12);
  });
});

describe('what the fields say they change', () => {
  it('is what the catalogue’s factors are', () => {
    const { stones, heat, cold, altitude } = RATE_FACTORS;
    expect(en.trip.leg.stonesHint).toContain(`${stones.factor.sharp} times`);
    expect(en.trip.leg.stonesHint).toContain(`${stones.factor.staked} times`);
    expect(heat[0]).toMatchObject({ threshold: 35, factor: 1.5 });
    expect(heat[1]).toMatchObject({ groups: ['tyre'], threshold: 35, factor: 1.5, softTyres: 3 });
    expect(cold.map(({ threshold }) => threshold)).toEqual([-10, -20, -20]);
    expect(cold[0]?.factor).toBe(2);
    expect(altitude[0]).toMatchObject({ threshold: 3000, factor: 1.3 });
  });
});

describe('small things', () => {
  it('fresh ids are ids of the file and hold their wish', () => {
    expect(freshId('Über die Dünen!', () => 0)).toBe('ber-die-d-nen-aaaaa');
    expect(freshId('', () => 0.999)).toBe('new-99999');
    for (const wish of [
      'Drawer, left',
      '<b>x</b>',
      'constructor',
      '\u{1F527}',
      '\u00c4'.repeat(90),
      'x'.repeat(500),
    ])
      expect(freshId(wish)).toMatch(/^[a-z0-9][a-z0-9-]{0,63}$/);
    expect(freshId('leg')).not.toBe(freshId('leg'));
  });

  it('jobs are found by every word typed, chosen ones left out', () => {
    const job = (id: string, title: string) => ({ id, title, system: 'cooling', skill: 2, people: 1 });
    const jobs = [
      job('CO-01', 'Join a split coolant hose'),
      job('CO-02', 'Replace a hose'),
      job('WT-01', 'Change a wheel'),
    ];
    expect(findJobs(jobs, 'hose split', []).map(({ id }) => id)).toEqual(['CO-01']);
    expect(findJobs(jobs, 'HOSE', ['CO-01']).map(({ id }) => id)).toEqual(['CO-02']);
    expect(findJobs(jobs, '  ', [])).toEqual([]);
  });
});
