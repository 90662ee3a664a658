import { JOBS } from '@waymend/catalogue/jobs/all';
import { describe, expect, it } from 'vitest';
import type { Garage } from '../../src/record/schema.ts';
import { lend, loanLedger, takeBack } from '../../src/road/loans.ts';
import { recordBreakdown, recordCare, recordDrill, recordUse } from '../../src/road/notes.ts';
import { odometerOf, recordReading, travelledKm } from '../../src/road/odometer.ts';
import { repairLimits } from '../../src/road/repair-limits.ts';
import { mendForGood, recordRecheck, recordRepair } from '../../src/road/repairs.ts';
import { ids, refusal, shed, value } from './road-garage.ts';

const at = (garage: Garage, id: string, km: number, on: string, oldKm?: number) =>
  recordReading(garage, { id, vehicle: 'ute', km, on, ...(oldKm === undefined ? {} : { oldKm }) });

describe('the odometer', () => {
  it('does not go back, neither against a reading nor against what the vehicle is recorded with', () => {
    expect(refusal(at(shed(), 'r1', 49_999, '2026-03-01'))[0]).toBe('odometer-back');
    const garage = value(at(shed(), 'r1', 51_000, '2026-03-01'));
    expect(garage.vehicles['ute']?.odometerKm).toBe(51_000);
    expect(refusal(at(garage, 'r2', 50_900, '2026-03-02'))).toEqual([
      'odometer-back',
      'The odometer of Pickup showed 51000 km on 2026-03-01, so it cannot show 50900 km on 2026-03-02; look at the figure again, or record that the instrument was replaced',
    ]);
    expect(refusal(at(garage, 'r2', 51_001, '2026-02-01'))[0]).toBe('odometer-back');
    expect(refusal(at(garage, 'r2', -1, '2026-04-01'))[0]).toBe('odometer-negative');
  });

  it('goes on counting after the instrument was replaced', () => {
    let garage = value(at(shed(), 'r1', 51_000, '2026-03-01'));
    garage = value(at(garage, 'r2', 10, '2026-04-01', 52_000));
    garage = value(at(garage, 'r3', 510, '2026-05-01'));
    expect(garage.vehicles['ute']?.odometerKm).toBe(52_500);
    expect(odometerOf(garage, 'ute').map((s) => s.travelledKm)).toEqual([51_000, 52_000, 52_500]);
    expect(travelledKm(garage, 'ute', 51_999, '2026-04-01')).toBe(51_999);
    expect(refusal(at(garage, 'r4', 500, '2026-06-01'))[0]).toBe('odometer-back');
  });

  it('takes an older reading between others without turning the vehicle back', () => {
    let garage = value(at(shed(), 'r1', 51_000, '2026-03-01'));
    garage = value(at(garage, 'r0', 50_500, '2026-02-01'));
    expect(garage.vehicles['ute']?.odometerKm).toBe(51_000);
  });
});

describe('repairs', () => {
  const job = JOBS.find(({ id }) => id === 'CO-01');
  const way = job?.expedients.find(({ trust, lookAgainKm }) => trust === 'T2' && lookAgainKm !== undefined);
  if (job === undefined || way === undefined) throw new Error('the hose job has changed');

  it('[M4] take trust, speed and looks of a weaker way from the catalogue: T2 is 50 km', () => {
    const limits = value(repairLimits(job, way.id));
    expect(limits).toMatchObject({ lasts: 'temporary', trustKm: 50, speedKmh: way.speedKmh });
    expect(limits.lookAgainKm).toContain(way.lookAgainKm);
    expect(refusal(repairLimits(job, 'CO-01/chewing-gum'))[0]).toBe('way-unknown');
  });

  it('[M4] have limits for every weaker way: T0 only makes safe, T4 has no distance', () => {
    for (const one of JOBS) {
      for (const expedient of one.expedients) {
        const { lasts, trustKm } = value(repairLimits(one, expedient.id));
        expect([lasts, trustKm], expedient.id).toEqual([
          expedient.trust === 'T0' ? 'made-safe' : 'temporary',
          { T0: 0, T1: 1, T2: 50, T3: 300, T4: undefined }[expedient.trust],
        ]);
      }
      if (one.outcome === 'drive-on') expect(value(repairLimits(one)).lasts).toBe('permanent');
    }
  });

  const done = { id: 'h', vehicle: 'ute', job: 'CO-01', expedient: way.id, on: '2026-03-04', atKm: 51_000 };

  it('are looked at again after they were done, and mended for good once', () => {
    const garage = value(recordRepair(shed(), done, value(repairLimits(job, way.id))));
    const look = { id: 'k', repair: 'h', on: '2026-03-05', atKm: 51_010, found: 'good' as const };
    const seen = value(recordRecheck(garage, look));
    expect(seen.rechecks['k']).toEqual({ repair: 'h', on: '2026-03-05', atKm: 51_010, found: 'good' });
    expect(refusal(recordRecheck(garage, { ...look, on: '2026-03-03' }))[0]).toBe('date-before');
    expect(refusal(recordRecheck(garage, { ...look, atKm: 50_990 }))[0]).toBe('odometer-back');
    expect(refusal(mendForGood(garage, 'h', '2026-03-01'))[0]).toBe('date-before');
    const mended = value(mendForGood(garage, 'h', '2026-03-20'));
    expect(mended.repairs['h']?.mendedOn).toBe('2026-03-20');
    expect(refusal(mendForGood(mended, 'h', '2026-03-21'))[0]).toBe('repair-mended');
  });

  it('that are permanent have nothing to put right', () => {
    const garage = value(recordRepair(shed(), done, { lasts: 'permanent', lookAgainKm: [50] }));
    expect(refusal(mendForGood(garage, 'h', '2026-03-20'))[0]).toBe('repair-permanent');
  });
});

describe('loans', () => {
  const loan = {
    id: 'l',
    belonging: 'wrench',
    copies: 1,
    to: 'the neighbour',
    on: '2026-02-01',
    dueOn: '2026-02-15',
  };

  it('take the copies that go off the kit, and bring them back', () => {
    const out = value(lend(shed(), loan, ids()));
    expect(out.belongings['wrench']).toMatchObject({ copies: 2, state: 'ready' });
    expect(out.belongings['wrench-1']).toMatchObject({ copies: 1, state: 'lent' });
    expect(out.loans['l']?.belonging).toBe('wrench-1');
    const back = value(takeBack(out, 'l', '2026-02-20'));
    expect(back.belongings['wrench-1']?.state).toBe('ready');
    expect(refusal(takeBack(back, 'l', '2026-02-21'))[0]).toBe('loan-back');
    expect(refusal(takeBack(out, 'l', '2026-01-31'))[0]).toBe('date-before');
  });

  it('refuse more than there is, and what is lent already', () => {
    expect(refusal(lend(shed(), { ...loan, copies: 4 }, ids()))[0]).toBe('loan-too-many');
    const all = value(lend(shed(), { ...loan, copies: 3 }, ids()));
    expect(all.belongings['wrench']?.state).toBe('lent');
    expect(refusal(lend(all, { ...loan, id: 'l2' }, ids()))[0]).toBe('loan-out');
  });

  it('stand in a ledger, those out first, with the days they are late', () => {
    let garage = value(lend(shed(), loan, ids()));
    garage = value(
      lend(garage, { id: 'a', belonging: 'pliers', copies: 1, to: 'the club', on: '2026-01-01' }, ids()),
    );
    garage = value(takeBack(garage, 'a', '2026-01-05'));
    expect(loanLedger(garage, '2026-03-01').map(({ id, daysLate }) => [id, daysLate])).toEqual([
      ['l', 14],
      ['a', 0],
    ]);
    expect(loanLedger(garage, '2026-02-15')[0]?.daysLate).toBe(0);
  });
});

describe('notes', () => {
  it('[M4] a drill makes its job practised by who did it', () => {
    const drill = { id: 'd', job: 'WT-01', vehicle: 'ute', on: '2026-02-01', by: 'ana', fetched: [] };
    const garage = value(recordDrill(shed(), drill));
    expect(garage.people['ana']?.practised).toEqual(['WT-01']);
    expect(value(recordDrill(garage, { ...drill, id: 'e' })).people['ana']?.practised).toEqual(['WT-01']);
    expect(refusal(recordDrill(shed(), { ...drill, by: 'bob' }))[0]).toBe('reference-unknown');
  });

  it('of use name either a belonging that was there or a thing that was wished for', () => {
    const use = { id: 'u', trip: 'loop', said: 'used' as const, times: 1 };
    expect(refusal(recordUse(shed(), use))[0]).toBe('use-unclear');
    expect(refusal(recordUse(shed(), { ...use, thing: 'SK3-10' }))[0]).toBe('use-unclear');
    expect(value(recordUse(shed(), { ...use, belonging: 'pliers' })).uses['u']?.belonging).toBe('pliers');
    expect(value(recordUse(shed(), { ...use, said: 'wished-for', thing: 'SK3-10' })).uses['u']?.thing).toBe(
      'SK3-10',
    );
  });

  it('of breakdowns keep to the odometer and to repairs of the same vehicle', () => {
    const happened = {
      id: 'b',
      vehicle: 'ute',
      failure: 'hose-split',
      on: '2026-03-04',
      atKm: 51_000,
      ended: 'limped' as const,
    };
    expect(value(recordBreakdown(shed(), happened)).breakdowns['b']?.failure).toBe('hose-split');
    expect(refusal(recordBreakdown(shed(), { ...happened, atKm: 40_000 }))[0]).toBe('odometer-back');
    expect(refusal(recordBreakdown(shed(), { ...happened, repair: 'nothing' }))[0]).toBe('reference-unknown');
  });

  it('of charging make what was flat ready', () => {
    const garage = shed();
    const pack = { copies: 1, weighed: false, state: 'flat', forSale: false, doesNotFit: false } as const;
    const flat: Garage = {
      ...garage,
      belongings: { ...garage.belongings, pack: { ...pack, confirmed: false } },
    };
    const mark = { id: 'c', belonging: 'pack', rule: 'jump-pack-lithium', on: '2026-03-01' };
    expect(value(recordCare(flat, { ...mark, chargePct: 90 })).belongings['pack']?.state).toBe('ready');
    expect(value(recordCare(flat, mark)).belongings['pack']?.state).toBe('flat');
    expect(refusal(recordCare(flat, { ...mark, belonging: 'x' }))[0]).toBe('reference-unknown');
  });
});
