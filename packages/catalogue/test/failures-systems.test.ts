import { describe, expect, test } from 'vitest';
import { FAILURE_GROUPS } from '../src/failures/groups.ts';
import { SYSTEM_FAILURES } from '../src/failures/systems.ts';
import { SYSTEM_JOBS } from '../src/jobs/systems.ts';
import { PATTERNS } from '../src/patterns/all.ts';
import { PLACES } from '../src/places/all.ts';
import { SYSTEM_PLACES } from '../src/places/systems.ts';
import { RATE_FACTORS } from '../src/rates/all.ts';
import { DUST_EVENTS, FILL_EVENTS } from '../src/rates/dust-and-fuel.ts';
import type { PlaceId } from '../src/shape/place-ids.ts';
import { PLACE_IDS } from '../src/shape/place-ids.ts';
import { BY_ID, job, place, failure, holds, together, NEEDS } from './support/system-jobs.ts';

describe('the places', () => {
  test('[M2] every place of these systems has one record', () => {
    const first = PLACE_IDS.indexOf('hose-clamp');
    expect(SYSTEM_PLACES.map((one) => one.id).sort()).toEqual([...PLACE_IDS.slice(first)].sort());
    expect(new Set(PLACES.map((one) => one.id)).size).toBe(PLACES.length);
  });

  test('[M2] sizes are marked as tools are, torques in order', () => {
    const marks: Readonly<Record<string, RegExp>> = { cross: /^cross \d$/ };
    for (const one of SYSTEM_PLACES) {
      for (const size of one.sizes) expect(size, one.id).toMatch(marks[one.drive] ?? /^\d+ mm$/);
      expect(new Set(one.sizes).size, one.id).toBe(one.sizes.length);
      expect(one.torqueNm[0] > 0 && one.torqueNm[0] < one.torqueNm[1], one.id).toBe(true);
    }
  });

  test('[M2] somebody turns every place, but for two that a workshop turns', () => {
    const turned = new Set(NEEDS.flatMap(([, needs]) => needs.flatMap((n) => ('turn' in n ? [n.turn] : []))));
    expect(SYSTEM_PLACES.map((one) => one.id).filter((id) => !turned.has(id))).toEqual([
      'oxygen-sensor',
      'crank-pulley-bolt',
    ]);
  });

  test('[M2] the typical ranges of the trade hold', () => {
    // Common practice, no source: sizes mm and torque N m by place.
    const within = (id: PlaceId, sizes: readonly number[], low: number, high: number): void => {
      const one = place(id);
      for (const size of one.sizes) expect(sizes, `${id} ${size}`).toContain(Number.parseInt(size, 10));
      expect(one.torqueNm[0], id).toBeGreaterThanOrEqual(low);
      expect(one.torqueNm[1], id).toBeLessThanOrEqual(high);
    };
    within('hose-clamp', [6, 7, 8], 2, 5);
    within('battery-terminal', [8, 10, 12, 13], 4, 12);
    within('spark-plug', [14, 16, 21], 15, 30);
    within('glow-plug', [8, 9, 10, 12], 8, 20);
    within('sump-plug', [13, 14, 17, 19, 22], 25, 45);
    within('alternator-bolt', [12, 13, 14, 17], 20, 60);
    within('seat-bolt', [14, 16, 17], 30, 50);
    within('tow-hitch-bolt', [17, 18, 19, 22, 24, 27, 30], 80, 350);
    within('rack-mount-key', [4, 5, 6, 8], 4, 30);
    expect(place('oxygen-sensor').sizes).toEqual(['22 mm']);
    expect([place('spark-plug').access, place('glow-plug').access, place('oxygen-sensor').access]).toEqual([
      'retain',
      'deep',
      'slotted',
    ]);
    expect([place('fuel-union').drive, place('clutch-union').drive]).toEqual(['flare', 'flare']);
  });

  test('[M3] bolts that go through are held at their other end', () => {
    const held = SYSTEM_PLACES.filter((one) => one.counterHold).map((one) => one.id);
    expect(held).toEqual(expect.arrayContaining(['exhaust-flange', 'engine-mount-bolt', 'tow-hitch-bolt']));
    expect(held).not.toContain('sump-plug');
  });
});

describe('the failures', () => {
  const GROUPS = [
    'battery',
    'charging-starting',
    'wiring',
    'ignition-management',
    'fuel-air',
    'cooling',
    'transmission',
    'exhaust',
    'body',
    'engine',
    'locks-glass',
  ];

  test('[M1] ids are unique, weights positive, chances chances, jobs known', () => {
    expect(new Set(SYSTEM_FAILURES.map((one) => one.id)).size).toBe(SYSTEM_FAILURES.length);
    for (const one of SYSTEM_FAILURES) {
      // Only what other rules add for it: nights of frost.
      if (one.id === RATE_FACTORS.waxing.failure) expect(one.share).toBe(0);
      else expect(one.share, one.id).toBeGreaterThan(0);
      for (const id of one.jobs) expect(BY_ID.has(id), `${one.id}: ${id}`).toBe(true);
      for (const chance of [one.immobilises ?? 0, one.restored ?? 0, one.renew?.rateFactor ?? 0]) {
        expect(chance, one.id).toBeGreaterThanOrEqual(0);
        expect(chance, one.id).toBeLessThan(1);
      }
    }
  });

  test('[M1] each group has between four and three dozen of them', () => {
    expect([...new Set(SYSTEM_FAILURES.map((one) => one.group))]).toEqual(GROUPS);
    for (const group of GROUPS) {
      const count = SYSTEM_FAILURES.filter((one) => one.group === group).length;
      expect(count, group).toBeGreaterThanOrEqual(4);
      expect(count, group).toBeLessThanOrEqual(36);
    }
  });

  test('[M4] every job is the cure of some failure that the same vehicle can have', () => {
    for (const one of SYSTEM_JOBS) {
      const cured = SYSTEM_FAILURES.filter((f) => f.jobs.includes(one.id) && together(f.when, one.when));
      expect(cured.length, one.id).toBeGreaterThan(0);
    }
  });

  test('[M1] dust and bad fuel point at failures that exist', () => {
    for (const events of [DUST_EVENTS, FILL_EVENTS]) expect(failure(events.failure).group).toBe(events.group);
  });

  test('[M1] what wears out by age can be renewed at home', () => {
    for (const id of [
      'hose-split',
      'v-belt-broken',
      'battery-worn-out',
      'trailer-bearing-failed',
      'fuel-filter-blocked',
    ])
      expect(failure(id).renew?.rateFactor, id).toBeLessThan(0.5);
  });

  describe.each(PATTERNS.filter((one) => one.kind === 'vehicle').map((one) => [one.id, one] as const))(
    'on a %s',
    (_, pattern) => {
      const has = new Set(pattern.features);
      const mine = SYSTEM_FAILURES.filter((one) => holds(one.when, has));

      test('[M4] each failure that has a cure has one this vehicle can use', () => {
        const dead = mine.filter((f) => f.jobs.length > 0 && !f.jobs.some((id) => holds(job(id).when, has)));
        // A battery dead inside wants a second one; a timing-belt engine's pump is workshop work.
        expect(
          dead.map((f) => f.id).filter((id) => id !== 'battery-shorted' && id !== 'water-pump-failed'),
        ).toEqual([]);
        expect(mine.length).toBeGreaterThan(60);
      });

      test('[M1] the failures of a group together stop the drive, and are cured, about as often as it says', () => {
        for (const group of FAILURE_GROUPS.filter((one) => GROUPS.includes(one.id))) {
          const failures = mine.filter((one) => one.group === group.id);
          const sum = (of: (index: number) => number) => failures.reduce((total, _f, i) => total + of(i), 0);
          const stops = failures.map((one) => one.share * (one.immobilises ?? group.immobilises));
          const stopping = sum((i) => stops[i] ?? 0) / sum((i) => failures[i]?.share ?? 0);
          const cured =
            sum((i) => {
              const one = failures[i];
              return one === undefined || one.jobs.length === 0
                ? 0
                : (stops[i] ?? 0) * (one.restored ?? group.restored);
            }) / sum((i) => stops[i] ?? 0);
          // Judged: the group's figure is an average over vehicles and roads.
          expect(Math.abs(stopping - group.immobilises), `${group.id} stops`).toBeLessThanOrEqual(0.15);
          expect(Math.abs(cured - group.restored), `${group.id} cured`).toBeLessThanOrEqual(0.1);
        }
      });
    },
  );
});
