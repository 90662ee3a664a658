import { describe, expect, it } from 'vitest';
import { readGarage } from '../../src/file/read-garage.ts';
import { writeGarage } from '../../src/file/write-garage.ts';
import { COLLECTIONS } from '../../src/record/collections.ts';
import { garageFile } from '../../src/record/schema.ts';
import { REFERENCES, removeEntity } from '../../src/remove.ts';
import { refusal, ROAD_TEXT, roadGarage, value } from './road-garage.ts';

describe('the frozen file of the road', () => {
  it('uses every table but the words, and is read and written the same for ever', () => {
    const garage = roadGarage();
    for (const table of COLLECTIONS)
      if (table !== 'words') expect(Object.keys(garage[table]).length, table).toBeGreaterThan(0);
    expect(readGarage(writeGarage(garage), 'again')).toEqual({ ok: true, value: garage });
    expect(garage.repairs['r1']).toEqual({
      vehicle: 'ute',
      job: 'CO-01',
      expedient: 'CO-01/new-hose',
      failure: 'hose-split',
      on: '2026-03-04',
      atKm: 59_500,
      lasts: 'temporary',
      trustKm: 50,
      speedKmh: 60,
      lookAgainKm: [5, 20],
      mendedOn: '2026-03-20',
    });
    expect(garage.counts['n3']).toEqual({
      muster: 'm2',
      belonging: 's10',
      out: 1,
      back: 0,
      lost: 0,
      damaged: 0,
      used: 0,
      missingParts: [],
    });
    expect(garage.belongings['gone']?.copies).toBe(0);
  });

  it('is refused, with its line, when a reference of the new tables leads nowhere', () => {
    const wrong: readonly (readonly [string, string, string])[] = [
      ['{ bag: roll, name: first', '{ bag: sack, name: first', 'pockets.slot-1.bag'],
      ['{ belonging: pack, rule', '{ belonging: pock, rule', 'careMarks.c1.belonging'],
      ['rule: jump-pack-lithium', 'rule: jump-pack-lithum', 'careMarks.c1.rule'],
      ['chargePct: 90, by: ana', 'chargePct: 90, by: eve', 'careMarks.c1.by'],
      ['m2: { vehicle: ute', 'm2: { vehicle: cart', 'musters.m2.vehicle'],
      ['trip: loop, job: WT-01', 'trip: lop, job: WT-01', 'musters.m1.trip'],
      ['trip: loop, job: WT-01', 'trip: loop, job: WT-99', 'musters.m1.job'],
      ['n3: { muster: m2', 'n3: { muster: m7', 'counts.n3.muster'],
      ['muster: m2, belonging: s10', 'muster: m2, belonging: s11', 'counts.n3.belonging'],
      ['r1: { vehicle: ute', 'r1: { vehicle: cart', 'repairs.r1.vehicle'],
      ['job: CO-01, exp', 'job: CO-91, exp', 'repairs.r1.job'],
      ['expedient: CO-01/new-hose', 'expedient: CO-01/old-hose', 'repairs.r1.expedient'],
      [
        'failure: hose-split, on: 2026-03-04, atKm: 59 500',
        'failure: hose-spilt, on: 2026-03-04, atKm: 59 500',
        'repairs.r1.failure',
      ],
      ['k1: { repair: r1', 'k1: { repair: r2', 'rechecks.k1.repair'],
      ['o1: { vehicle: ute', 'o1: { vehicle: cart', 'readings.o1.vehicle'],
      ['b1: { vehicle: ute', 'b1: { vehicle: cart', 'breakdowns.b1.vehicle'],
      [
        'b1: { vehicle: ute, failure: hose-split',
        'b1: { vehicle: ute, failure: hose-spilt',
        'breakdowns.b1.failure',
      ],
      ['repair: r1, trip: loop', 'repair: r9, trip: loop', 'breakdowns.b1.repair'],
      ['repair: r1, trip: loop', 'repair: r1, trip: lop', 'breakdowns.b1.trip'],
      ['l1: { belonging: pack', 'l1: { belonging: pock', 'loans.l1.belonging'],
      ['d1: { job: WT-01', 'd1: { job: WT-99', 'drills.d1.job'],
      ['d1: { job: WT-01, vehicle: ute', 'd1: { job: WT-01, vehicle: cart', 'drills.d1.vehicle'],
      ['minutes: 35, by: ben', 'minutes: 35, by: bob', 'drills.d1.by'],
      ['fetched: [SK3-13]', 'fetched: [SK3-99]', 'drills.d1.fetched.0'],
      ['u1: { trip: loop', 'u1: { trip: lop', 'uses.u1.trip'],
      ['u1: { trip: loop, belonging: s13', 'u1: { trip: loop, belonging: s14', 'uses.u1.belonging'],
      ['thing: SK3-10', 'thing: SK3-99', 'uses.u2.thing'],
    ];
    for (const [from, to, path] of wrong) {
      const text = ROAD_TEXT.replace(from, to);
      expect(text, from).not.toBe(ROAD_TEXT);
      const read = readGarage(text, 'x');
      expect(read.ok ? [] : read.error.map((r) => [r.path, (r.line ?? 0) > 1]), to).toEqual([[path, true]]);
    }
  });

  it('says whether a thing stays in its bag with yes or no, and nothing else', () => {
    const fixed = (word: string) =>
      readGarage(ROAD_TEXT.replace('pocket: slot-1, copies', `pocket: slot-1, fixed: ${word}, copies`), 'x');
    const read = fixed('true');
    if (!read.ok) throw new Error('it should be read');
    expect(read.value.belongings['s13']).toMatchObject({ pocket: 'slot-1', fixed: true });
    expect(roadGarage().belongings['s13']).not.toHaveProperty('fixed');
    const wrong = fixed('perhaps');
    expect(wrong.ok ? null : wrong.error.map((r) => [r.path, r.line])).toEqual([
      ['belongings.s13.fixed', 18],
    ]);
    expect(readGarage(writeGarage(read.value), 'again')).toEqual(read);
  });

  it('is refused when a distance is negative or absurd', () => {
    for (const [from, to] of [
      ['km: 59000', 'km: -1'],
      ['oldKm: 60000', 'oldKm: 60000000'],
      ['atKm: 59510', 'atKm: -59510'],
    ] as const) {
      const read = readGarage(ROAD_TEXT.replace(from, to), 'x');
      expect(read.ok ? null : read.error[0]?.id).toMatch(/^distance-/);
    }
  });
});

describe('removing', () => {
  it('leaves no reference dangling, whatever is removed', () => {
    const garage = roadGarage();
    for (const table of COLLECTIONS) {
      for (const id of Object.keys(garage[table])) {
        const after = value(removeEntity(garage, table, id));
        expect(Object.hasOwn(after[table], id)).toBe(false);
        const read = readGarage(writeGarage(after), 'x', { for: 'edit' });
        expect(read, `${table} ${id}`).toEqual({ ok: true, value: after });
      }
    }
  });

  it('meets each kind of reference in the file, so that none goes untried', () => {
    const garage = roadGarage();
    for (const { from, field, to } of REFERENCES) {
      const named = Object.values(garage[from]).flatMap((entity: object) => {
        const found: unknown = Object.entries(entity).find(([key]) => key === field)?.[1];
        const all: readonly unknown[] = Array.isArray(found) ? found : [found];
        return all;
      });
      expect(
        named.some((id) => typeof id === 'string' && Object.hasOwn(garage[to], id)),
        `${from}.${field}`,
      ).toBe(true);
    }
  });

  it('takes with a vehicle what is only about it, and keeps the belongings', () => {
    const after = value(removeEntity(roadGarage(), 'vehicles', 'ute'));
    for (const table of [
      'trips',
      'legs',
      'musters',
      'counts',
      'repairs',
      'rechecks',
      'breakdowns',
      'readings',
    ] as const)
      expect(after[table], table).toEqual({});
    expect(Object.keys(after.belongings)).toEqual(Object.keys(roadGarage().belongings));
    expect(after.belongings['box']).not.toHaveProperty('berth');
  });

  it('keeps a trip while somebody is left aboard, and a muster without its trip', () => {
    const garage = roadGarage();
    const alone = value(removeEntity(garage, 'people', 'ben'));
    expect(alone.trips['loop']?.people).toEqual(['ana']);
    expect(value(removeEntity(alone, 'people', 'ana')).trips).toEqual({});
    const tripless = value(removeEntity(garage, 'trips', 'loop'));
    expect(tripless.musters['m1']).not.toHaveProperty('trip');
    expect(tripless.breakdowns['b1']).toMatchObject({ repair: 'r1' });
    expect(tripless.uses).toEqual({});
  });

  it('refuses what is not there, and changes nothing it was given', () => {
    const garage = roadGarage();
    expect(refusal(removeEntity(garage, 'bags', 'sack'))[0]).toBe('bag-unknown');
    value(removeEntity(garage, 'vehicles', 'ute'));
    expect(garage).toEqual(roadGarage());
    expect(garageFile.safeParse(garage).success).toBe(true);
  });
});
