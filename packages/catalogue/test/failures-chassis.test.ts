import { describe, expect, test } from 'vitest';
import { CHASSIS_FAILURES } from '../src/failures/chassis.ts';
import { FAILURE_GROUPS } from '../src/failures/groups.ts';
import { CHASSIS_JOBS } from '../src/jobs/chassis.ts';
import { PATTERNS } from '../src/patterns/all.ts';
import { CHASSIS_PLACES } from '../src/places/chassis.ts';
import { PLACE_IDS } from '../src/shape/place-ids.ts';
import { BY_ID, job, holds, together, NEEDS } from './support/chassis-jobs.ts';

describe('the places', () => {
  test('[M2] every place of these systems has one record', () => {
    const first = PLACE_IDS.indexOf('wheel-nut');
    const last = PLACE_IDS.indexOf('body-mount-bolt');
    expect(CHASSIS_PLACES.map((place) => place.id).sort()).toEqual(
      [...PLACE_IDS.slice(first, last + 1)].sort(),
    );
  });

  test('[M2] sizes, torques and marks are sound', () => {
    for (const place of CHASSIS_PLACES) {
      expect(new Set(place.sizes).size, place.id).toBe(place.sizes.length);
      for (const size of place.sizes) expect(size, place.id).toMatch(/^\d+ mm$/);
      expect(place.torqueNm[0] > 0 && place.torqueNm[0] < place.torqueNm[1], place.id).toBe(true);
      // Somebody must turn it: a place without a job is a size nobody needs.
      expect(
        NEEDS.some(([, needs]) => needs.some((need) => 'turn' in need && need.turn === place.id)),
        place.id,
      ).toBe(true);
    }
    for (const id of ['wheel-nut', 'hub-nut', 'brake-union', 'tie-rod-end', 'lower-ball-joint'])
      expect(CHASSIS_PLACES.find((place) => place.id === id)?.critical, id).toBeDefined();
  });

  test('[M2] the typical ranges of the trade table hold', () => {
    // Common practice, no source: sizes mm and torque N m by place.
    const ranges: Readonly<Record<string, readonly [number[], number, number]>> = {
      'wheel-nut': [[17, 19, 21, 22], 100, 210],
      'hub-nut': [[30, 32, 34, 35, 36, 38, 39, 41], 180, 330],
      'hub-ring-nut': [[52, 54], 10, 80],
      'prop-flange-rear': [[12, 13, 14, 17], 60, 95],
      'spring-u-bolt': [[17, 19, 21, 22, 24], 90, 200],
      'brake-bleed-screw': [[7, 8, 9, 10, 11], 6, 12],
      'brake-union': [[10, 11, 12, 13], 12, 18],
      'brake-hose-banjo': [[12, 14, 17], 20, 35],
    };
    for (const [id, [sizes, low, high]] of Object.entries(ranges)) {
      const place = CHASSIS_PLACES.find((one) => one.id === id);
      expect(
        place?.sizes.map((size) => Number.parseInt(size, 10)).sort((a, b) => a - b),
        id,
      ).toEqual(sizes);
      expect(place?.torqueNm, id).toEqual([low, high]);
    }
    expect(CHASSIS_PLACES.find((one) => one.id === 'hub-nut')?.sizes[0]).toBe('35 mm');
  });
});

describe('the failures', () => {
  test('[M1] ids are unique, weights positive, groups and jobs known', () => {
    expect(new Set(CHASSIS_FAILURES.map((one) => one.id)).size).toBe(CHASSIS_FAILURES.length);
    for (const one of CHASSIS_FAILURES) {
      expect(one.share, one.id).toBeGreaterThan(0);
      expect(one.basis.kind, one.id).toBe('estimate');
      for (const id of one.jobs) expect(BY_ID.has(id), `${one.id}: ${id}`).toBe(true);
      for (const chance of [one.immobilises ?? 0, one.restored ?? 0, one.renew?.rateFactor ?? 0]) {
        expect(chance, one.id).toBeGreaterThanOrEqual(0);
        expect(chance, one.id).toBeLessThanOrEqual(1);
      }
    }
    expect([...new Set(CHASSIS_FAILURES.map((one) => one.group))].sort()).toEqual([
      'brakes',
      'driveline',
      'steering',
      'suspension',
      'tyre',
    ]);
  });

  test('[M4] every job is the cure of some failure that the same vehicle can have', () => {
    for (const one of CHASSIS_JOBS) {
      const failures = CHASSIS_FAILURES.filter(
        (failure) => failure.jobs.includes(one.id) && together(failure.when, one.when),
      );
      expect(failures.length, one.id).toBeGreaterThan(0);
    }
  });

  describe.each(
    PATTERNS.filter((pattern) => pattern.kind === 'vehicle').map((pattern) => [pattern.id, pattern] as const),
  )('on a %s', (_, pattern) => {
    const has = new Set(pattern.features);
    const mine = CHASSIS_FAILURES.filter((one) => holds(one.when, has));

    test('[M4] each failure that has a cure has one this vehicle can use', () => {
      expect(mine.length).toBeGreaterThan(20);
      const dead = mine.filter(
        (one) => one.jobs.length > 0 && !one.jobs.some((id) => holds(job(id).when, has)),
      );
      expect(dead.map((one) => one.id)).toEqual([]);
    });

    test('[M1] the failures of a group together stop the drive, and are cured, about as often as the group says', () => {
      for (const group of FAILURE_GROUPS) {
        const failures = mine.filter((one) => one.group === group.id);
        if (failures.length === 0) continue;
        const weight = failures.reduce((sum, one) => sum + one.share, 0);
        const stops = failures.map((one) => one.share * (one.immobilises ?? group.immobilises));
        const stopping = stops.reduce((a, b) => a + b, 0);
        const cured = failures.reduce(
          (sum, one, index) =>
            sum + (one.jobs.length === 0 ? 0 : (stops[index] ?? 0) * (one.restored ?? group.restored)),
          0,
        );
        // Judged: the group's own figure is an average over vehicles, so within 0.15 of it and 0.1 of its cure.
        expect(Math.abs(stopping / weight - group.immobilises), `${group.id} stops`).toBeLessThanOrEqual(
          0.15,
        );
        expect(Math.abs(cured / stopping - group.restored), `${group.id} cured`).toBeLessThanOrEqual(0.1);
      }
    });
  });
});
